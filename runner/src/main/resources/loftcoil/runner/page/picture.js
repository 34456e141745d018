// Charts and drawings: SVG text made into elements, a caption, and the numbers as a table.
import { el } from './dom.js';
import { readAt, readout } from './readout.js';

const DRAWN = new Set(['svg', 'g', 'path', 'line', 'polyline', 'polygon', 'rect', 'circle', 'ellipse', 'text', 'tspan',
  'title', 'desc', 'defs', 'clippath', 'lineargradient', 'radialgradient', 'stop', 'marker', 'use', 'symbol', 'pattern',
  'mask']);
const STYLED = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linecap', 'stroke-linejoin',
  'stroke-miterlimit', 'stroke-opacity', 'fill-opacity', 'fill-rule', 'opacity', 'font-family', 'font-size', 'font-weight',
  'text-anchor', 'stop-color', 'stop-opacity', 'clip-rule', 'stroke-dashoffset'];
let counter = 0;

/** The picture as an SVG element that fits its place, with its alternative text. */
export function drawn(picture) {
  const parsed = new DOMParser().parseFromString(withoutStyles(picture.svg), 'image/svg+xml');
  const root = parsed.documentElement;
  if (root.localName !== 'svg' || parsed.querySelector('parsererror')) {
    return el('p', { class: 'quiet' }, 'The picture could not be drawn.');
  }
  const svg = document.importNode(root, true);
  clean(svg);
  setOwnIds(svg);
  fit(svg);
  svg.setAttribute('role', 'img');
  svg.removeAttribute('aria-labelledby');
  svg.setAttribute('aria-label', `${picture.title}. ${picture.says}`);
  svg.classList.add('drawn');
  return svg;
}

/** The picture with caption and, where it has numbers, their table behind a fold. A chart has its title drawn in. */
export function figure(picture, caption = picture.title) {
  const svg = drawn(picture);
  const titled = svg.classList.contains('lc-chart') && caption === picture.title;
  const frame = el('div', { class: 'drawn-frame' }, svg);
  movable(frame, svg.classList.contains('lc-drawing'));
  return el('figure', {},
    frame, el('p', { class: 'go-on' }, 'The picture goes on to the right: move it sideways.'), readout(frame),
    el('figcaption', { class: titled ? 'unseen' : null }, caption),
    numbers(picture));
}

/** Where it is narrow a drawing is wider than its frame; it is said, and keys have to reach what is out of sight. */
function movable(frame, drawing) {
  new ResizeObserver(() => {
    const wider = frame.scrollWidth > frame.clientWidth + 1;
    frame.classList.toggle('goes-on', wider);
    if (!drawing) return;
    if (wider) {
      frame.tabIndex = 0;
      frame.setAttribute('role', 'group');
      frame.setAttribute('aria-label', 'Drawing; the arrow keys move it');
    } else {
      for (const name of ['tabindex', 'role', 'aria-label']) frame.removeAttribute(name);
    }
  }).observe(frame);
}

/** Puts a new picture into the frame of an old one; the value that was read stays the one that is read. */
export function exchangeDrawn(old, picture) {
  const frame = old.querySelector('.drawn-frame');
  const at = readAt(frame);
  frame.replaceChildren(drawn(picture));
  const words = readout(frame, at);
  const before = old.querySelector('.readout');
  if (words && before) before.replaceWith(words);
}

export function numbers(picture) {
  if (!picture.rows.length) return null;
  const head = el('tr', {}, ...picture.columns.map((name) => el('th', { scope: 'col' }, name)));
  const rows = picture.rows.map((row) => el('tr', {}, ...row.map((text) => el('td', {}, text))));
  return el('details', { class: 'numbers' },
    el('summary', {}, 'Numbers'),
    el('div', { class: 'table-frame', tabindex: '0', role: 'group', 'aria-label': `Numbers of ${picture.title}` },
      el('table', {}, el('thead', {}, head), el('tbody', {}, ...rows))));
}

/** The page's rules forbid inline styles already while parsing: they are set aside here, and become attributes below. */
function withoutStyles(svg) {
  return svg.replace(/<style\b[\s\S]*?<\/style\s*>/gi, '').replace(/(<[^>]*?\s)style(\s*=)/gi, '$1data-style$2');
}

/** Only shapes and text stay; inline styles become attributes. */
function clean(node) {
  for (const child of [...node.children]) {
    if (DRAWN.has(child.localName.toLowerCase())) clean(child);
    else child.remove();
  }
  for (const { name, value } of [...node.attributes]) {
    const link = name === 'href' || name === 'xlink:href';
    if (name.startsWith('on') || (link && !value.startsWith('#'))) node.removeAttribute(name);
    if (name === 'data-style') {
      node.removeAttribute(name);
      spread(node, value);
    }
  }
}

function spread(node, style) {
  for (const part of style.split(';')) {
    const [name, value] = part.split(/:(.*)/s).map((text) => text && text.trim());
    if (value && STYLED.includes(name)) node.setAttribute(name, value);
  }
}

/** Two pictures in one page must not share names of clips or markers. */
function setOwnIds(svg) {
  const own = new Map();
  counter += 1;
  for (const named of svg.querySelectorAll('[id]')) {
    own.set(named.id, `d${counter}-${named.id}`);
    named.id = own.get(named.id);
  }
  if (!own.size) return;
  for (const node of svg.querySelectorAll('*')) {
    for (const { name, value } of [...node.attributes]) {
      const renamed = value
        .replace(/url\(['"]?#([^)'"]+)['"]?\)/g, (all, old) => (own.has(old) ? `url(#${own.get(old)})` : all))
        .replace(/^#(.+)$/, (all, old) => (name.endsWith('href') && own.has(old) ? `#${own.get(old)}` : all));
      if (renamed !== value) node.setAttribute(name, renamed);
    }
  }
}

function fit(svg) {
  const size = (name) => Number.parseFloat(svg.getAttribute(name)) || 0;
  if (!svg.getAttribute('viewBox') && size('width') && size('height')) {
    svg.setAttribute('viewBox', `0 0 ${size('width')} ${size('height')}`);
  }
  svg.removeAttribute('width');
  svg.removeAttribute('height');
  svg.setAttribute('preserveAspectRatio', 'xMidYMid meet');
}
