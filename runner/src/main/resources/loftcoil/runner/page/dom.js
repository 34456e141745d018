// Small help with elements. Text goes in as text; HTML from Loftcoil goes through a parser of its own.
export const id = (name) => document.getElementById(name);

/** Makes an element: attributes by name, `on…` functions as listeners, then what stands in it. */
export function el(name, attributes = {}, ...inside) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === false || value === null || value === undefined) continue;
    if (typeof value === 'function') made.addEventListener(key.replace(/^on/, ''), value);
    else if (value === true) made.setAttribute(key, '');
    else made.setAttribute(key, value);
  }
  made.append(...inside.filter((part) => part !== null && part !== undefined && part !== ''));
  return made;
}

/** Help that waits until it is wanted: what each fitting counts, its heading first. */
export function fittingCounts(counts) {
  if (!counts.length) return null;
  const [head, ...rows] = counts;
  return el('details', { class: 'fitting-counts' }, el('summary', {}, 'What each fitting counts'), el('p', {}, head),
    el('ul', {}, ...rows.map((row) => el('li', {}, row))));
}

export function clear(place) {
  place.replaceChildren();
  return place;
}

/** HTML that Loftcoil made from a lesson's text, as nodes; wide tables scroll within themselves. */
export function prose(html) {
  const parsed = new DOMParser().parseFromString(html, 'text/html');
  const box = el('div', { class: 'prose' });
  box.append(...[...parsed.body.childNodes].map((node) => document.importNode(node, true)));
  for (const table of box.querySelectorAll('table')) {
    const frame = el('div', { class: 'table-frame', tabindex: '0', role: 'group', 'aria-label': 'Table' });
    table.replaceWith(frame);
    frame.append(table);
  }
  for (const block of box.querySelectorAll('pre')) block.tabIndex = 0;
  return box;
}

/**
 * The one rule for moving about: what was gone to begins at its heading, and there the focus is. `scroll` is false where
 * the place has been scrolled to already.
 */
export function arrive(main, { scroll = true } = {}) {
  if (scroll) window.scrollTo(0, 0);
  const place = main.querySelector('h1') || main;
  place.tabIndex = -1;
  place.focus({ preventScroll: true });
}

/** Tells those who cannot see what has changed; the last words stand, said once. */
export function say(words) {
  unsaid = unsaid && unsaid !== words ? `${unsaid} ${words}` : words;
  if (saying) return;
  id('said').textContent = '';
  saying = window.setTimeout(sayNow, Math.max(50, saidAt + BETWEEN_MS - performance.now()));
}

function sayNow() {
  id('said').textContent = unsaid;
  unsaid = '';
  saying = 0;
  saidAt = performance.now();
}

/** Words upon words swallow the earlier ones before they are heard. */
const BETWEEN_MS = 500;
let unsaid = '';
let saidAt = -BETWEEN_MS;
let saying = 0;

/** Holds a button back while what it asked for is under way. It keeps the focus, which a disabled one would lose. */
export function hold(button, on) {
  if (on) button.setAttribute('aria-disabled', 'true');
  else button.removeAttribute('aria-disabled');
}

export function isHeld(button) {
  return button.getAttribute('aria-disabled') === 'true';
}

/** A drawn sign with its meaning beside it in words. */
export function sign(kind) {
  const ns = 'http://www.w3.org/2000/svg';
  const svg = document.createElementNS(ns, 'svg');
  svg.setAttribute('viewBox', '0 0 24 24');
  svg.setAttribute('class', `sign sign-${kind}`);
  svg.setAttribute('aria-hidden', 'true');
  const shapes = {
    caution: ['M12 3 22.5 21h-21Z', 'M12 9.5v5.5M12 17.6v.8'],
    danger: ['M8 2h8l6 6v8l-6 6H8l-6-6V8Z', 'M12 7v6.5M12 16.4v.8'],
    right: ['M12 2a10 10 0 1 0 .01 0Z', 'm7.5 12.5 3 3 6-7'],
    wrong: ['M12 2a10 10 0 1 0 .01 0Z', 'M8 12h8'],
    noted: ['M5 3h14v18H5Z', 'M8.5 9h7M8.5 13h7M8.5 17h4'],
  };
  for (const [order, shape] of (shapes[kind] || shapes.noted).entries()) {
    const path = document.createElementNS(ns, 'path');
    path.setAttribute('d', shape);
    path.setAttribute('class', order === 0 ? 'sign-ground' : 'sign-stroke');
    svg.append(path);
  }
  return svg;
}
