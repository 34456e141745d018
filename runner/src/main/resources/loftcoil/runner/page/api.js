// What the page asks of Loftcoil. A failure is an Error with `status`: 0 where nothing answered.
const GONE = 'Loftcoil does not answer.';

async function ask(path, options) {
  let answer;
  try {
    answer = await fetch(`/api/${path}`, { credentials: 'same-origin', ...options });
  } catch (cause) {
    throw failure(0, GONE, cause);
  }
  let content = {};
  try {
    content = await answer.json();
  } catch (cause) {
    throw failure(0, GONE, cause);
  }
  if (!answer.ok) throw failure(answer.status, content.words || `Refused (${answer.status}).`);
  return content;
}

function failure(status, words, cause) {
  return Object.assign(new Error(words, { cause }), { status });
}

function post(path, body = {}, more = {}) {
  return ask(path, {
    method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), ...more,
  });
}

/** True where Loftcoil has been closed, or started anew so that this page is no longer known. */
export function isGone(trouble) {
  return trouble.status === 0 || trouble.status === 401;
}

export const course = () => ask('course');
export const lesson = (lessonId) => ask(`lesson/${encodeURIComponent(lessonId)}`);
export const design = () => ask('design');
export const words = () => ask('words');
export const run = (lesson, step, source, dragged) => post('run', { lesson, step, source, dragged });
export const keep = (lesson, step, source, leaving = false) =>
  post('keep', { lesson, step, source }, { keepalive: leaving });
export const putBack = (lesson, step) => post('put-back', { lesson, step });
export const answer = (lesson, step, text) => post('answer', { lesson, step, text });
export const complete = (lesson, step, source, cursor) => post('complete', { lesson, step, source, cursor });
export const stop = () => post('stop');
