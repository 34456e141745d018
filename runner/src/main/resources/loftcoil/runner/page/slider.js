// A value to drag, also by keyboard: arrows by one stop, Page Up and Page Down by ten, Home and End to the ends.
import { el } from './dom.js';

let counter = 0;

export function makeSlider(drag, last, moved) {
  counter += 1;
  const name = `slider-${counter}`;
  const places = decimals(drag.by);
  const words = (value) => TAPE[drag.unit]?.(Number(value))
    ?? `${rounded(Number(value), drag, places).replace('-', '−')} ${drag.unit}`.trim();
  const input = el('input', {
    type: 'range', id: name, min: drag.from, max: drag.to, step: drag.by, 'aria-describedby': `${name}-ends`,
  });
  // The design's own value may lie between two stops: it stands until the slider is moved.
  let own = last === undefined || last === null ? drag.start : (last - drag.nought) / drag.one;
  input.value = own;
  const now = () => own ?? Number(input.value);
  // The slider itself says its value: said here too it would be heard twice.
  const shown = el('output', { for: name, 'aria-live': 'off' }, words(now()));
  const tell = () => {
    shown.textContent = words(now());
    input.setAttribute('aria-valuetext', words(now()));
  };
  tell();
  input.addEventListener('input', () => { own = null; tell(); moved(); });
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
  // What is sent is metric, whatever is shown.
  const value = () => (drag.one === 1 && drag.nought === 0 ? now() : Number((now() * drag.one + drag.nought).toPrecision(9)));
  const put = (shownValue) => {
    own = shownValue;
    input.value = shownValue;
    tell();
    moved();
  };
  return { box, value, shown: now, put };
}

/** With the decimals of a stop, and one more where it stands between two. */
function rounded(value, drag, places) {
  const stops = (value - drag.from) / drag.by;
  return Math.abs(stops - Math.round(stops)) < 1e-6 ? value.toFixed(places) : String(Number(value.toFixed(places + 1)));
}

/** Feet and inches as on a tape, to a sixteenth. */
const TAPE = {
  ft: (feet) => {
    const sixteenths = Math.round(Math.abs(feet) * 192);
    const [whole, rest] = [Math.floor(sixteenths / 192), sixteenths % 192];
    const sign = feet < 0 && sixteenths > 0 ? '−' : '';
    return sign + (whole ? `${whole} ft${rest ? ` ${inches(rest)} in` : ''}` : `${inches(rest)} in`);
  },
  in: (long) => `${long < 0 ? '−' : ''}${inches(Math.round(Math.abs(long) * 16))} in`,
};

function inches(sixteenths) {
  const whole = Math.floor(sixteenths / 16);
  let [over, under] = [sixteenths % 16, 16];
  while (over && over % 2 === 0) { over /= 2; under /= 2; }
  return over ? `${whole || ''}${whole ? '-' : ''}${over}/${under}` : String(whole);
}

function decimals(by) {
  const text = String(by);
  return text.includes('.') ? text.length - text.indexOf('.') - 1 : 0;
}
