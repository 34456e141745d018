// A value to drag, also by keyboard: arrows by one stop, Page Up and Page Down by ten, Home and End to the ends.
import { el } from './dom.js';

let counter = 0;

export function makeSlider(drag, last, moved) {
  counter += 1;
  const name = `slider-${counter}`;
  const places = decimals(drag.by);
  const words = (value) => `${Number(value).toFixed(places).replace('-', '−')} ${drag.unit}`.trim();
  const input = el('input', {
    type: 'range', id: name, min: drag.from, max: drag.to, step: drag.by, 'aria-describedby': `${name}-ends`,
  });
  input.value = last ?? drag.start;
  // The slider itself says its value: said here too it would be heard twice.
  const shown = el('output', { for: name, 'aria-live': 'off' }, words(input.value));
  const tell = () => {
    shown.textContent = words(input.value);
    input.setAttribute('aria-valuetext', words(input.value));
  };
  tell();
  input.addEventListener('input', () => { tell(); moved(); });
  input.addEventListener('keydown', (event) => {
    const jump = { PageUp: 10, PageDown: -10 }[event.key];
    if (!jump) return;
    event.preventDefault();
    input.value = Number(input.value) + jump * drag.by;
    input.dispatchEvent(new Event('input'));
  });
  const box = el('div', { class: 'slider' },
    el('label', { for: name }, drag.label), shown, input,
    el('div', { class: 'slider-ends', id: `${name}-ends` },
      el('span', {}, words(drag.from)), el('span', { class: 'unseen' }, ' to '), el('span', {}, words(drag.to))));
  return { box, value: () => Number(input.value) };
}

function decimals(by) {
  const text = String(by);
  return text.includes('.') ? text.length - text.indexOf('.') - 1 : 0;
}
