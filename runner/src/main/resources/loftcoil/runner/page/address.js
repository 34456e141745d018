// The part of the address after '#': '#/lesson' or '#/lesson/step'.
export function readAddress() {
  const parts = window.location.hash.replace(/^#\/?/, '').split('/').map(decoded);
  return { lesson: parts[0] || '', step: parts[1] || '' };
}

export function addressOf(lesson, step = '') {
  return `#/${encodeURIComponent(lesson)}${step ? `/${encodeURIComponent(step)}` : ''}`;
}

function decoded(part) {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
