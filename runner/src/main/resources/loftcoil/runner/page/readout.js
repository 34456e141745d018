// The values of a plot under pointer and finger, and by the arrow keys: a line across the plot, a dot on each curve, and
// the numbers in words beneath.
import { el } from './dom.js';

const SVG = 'http://www.w3.org/2000/svg';
const JUMPS = { ArrowRight: 1, ArrowLeft: -1, PageUp: 10, PageDown: -10 };
let counter = 0;

/** Adds it to the frame of a drawn chart that has its values with it; gives back the place for the words, or nothing. */
export function readout(frame, keepAt = null) {
  const svg = frame.querySelector('svg[data-readout]');
  if (!svg) return null;
  const data = JSON.parse(svg.dataset.readout);
  if (!data.at.length) return null;
  counter += 1;
  const words = el('p', { class: 'readout', id: `readout-${counter}`, 'aria-live': 'off' },
    el('span', { class: 'quiet' }, `Point at the plot, or use the arrow keys in it, to read its values.${svg.querySelector('.lc-crossing') ? ' A ring: two curves cross there.' : ''}`));
  const state = { svg, data, words, mark: null, at: -1 };
  frame.tabIndex = 0;
  frame.setAttribute('role', 'group');
  frame.setAttribute('aria-label', `Plot. Arrow keys read its values.`);
  frame.setAttribute('aria-describedby', words.id);
  if (frame.dataset.read) frame.removeEventListener('keydown', frame.readKey);
  frame.dataset.read = 'yes';
  frame.readKey = (event) => byKey(state, event);
  frame.addEventListener('keydown', frame.readKey);
  const point = (event) => byPointer(state, event);
  svg.addEventListener('pointermove', point);
  svg.addEventListener('pointerdown', point);
  frame.readState = state;
  if (keepAt !== null && keepAt >= 0) show(state, Math.min(keepAt, data.at.length - 1));
  return words;
}

/** Which value is shown now, to be shown again on a plot that takes this one's place. */
export function readAt(frame) {
  return frame.readState ? frame.readState.at : null;
}

function byKey(state, event) {
  const last = state.data.at.length - 1;
  const to = { Home: 0, End: last }[event.key];
  const jump = JUMPS[event.key];
  if (to === undefined && !jump) return;
  event.preventDefault();
  state.words.setAttribute('aria-live', 'polite');
  const from = state.at < 0 ? (jump > 0 ? -1 : last + 1) : state.at;
  show(state, to ?? Math.max(0, Math.min(last, from + jump)));
  // On a narrow screen the plot is wider than its frame.
  state.mark.scrollIntoView({ block: 'nearest', inline: 'nearest' });
}

function byPointer(state, event) {
  const box = state.svg.getBoundingClientRect();
  const x = ((event.clientX - box.left) / box.width) * state.svg.viewBox.baseVal.width;
  let best = 0;
  state.data.at.forEach(([at], n) => { if (Math.abs(at - x) < Math.abs(state.data.at[best][0] - x)) best = n; });
  // Under a moving pointer nothing is said aloud.
  state.words.setAttribute('aria-live', 'off');
  show(state, best);
}

function show(state, n) {
  state.at = n;
  const [x, position, ...values] = state.data.at[n];
  if (state.mark) state.mark.remove();
  const mark = document.createElementNS(SVG, 'g');
  mark.setAttribute('class', 'lc-read');
  mark.append(shape('line', { x1: x, x2: x, y1: state.data.top, y2: state.data.bottom, class: 'lc-ink-stroke' }));
  const said = [];
  values.forEach((value, c) => {
    if (value === null) return;
    const name = state.data.curves[c];
    if (value === 0) return said.push(`${name}: ${state.data.empty || 'no value'}`);
    mark.append(shape('circle', { cx: x, cy: value[0], r: 5, ...colourOf(state.svg, c) }));
    said.push(`${name}: ${value[1]}`);
  });
  state.svg.append(mark);
  state.mark = mark;
  state.words.replaceChildren(el('strong', {}, `${state.data.name} ${position}`), ` — ${said.join('; ')}`.replace(' — ', ': '));
}

/** In the colour of its curve, which the drawing carries as an attribute beside a class. */
function colourOf(svg, c) {
  const number = (c % 6) + 1;
  const drawn = svg.querySelector(`.lc-curve-${number}-stroke, .lc-curve-${number}-fill`);
  return { class: `lc-curve-${number}-fill`, fill: drawn ? drawn.getAttribute('stroke') || drawn.getAttribute('fill') : 'currentColor' };
}

function shape(name, attributes) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}
