// A faulty system: first two readings and a cause; when that is found its levers, its drawing and what can be read on it. Each
// move is shown at once, judged when asked.
import * as api from './api.js';
import { clear, el, say, sign } from './dom.js';
import { drawn, numbers } from './picture.js';
import { makeSlider } from './slider.js';
import { remember } from './keep.js';
import { diagnosisField } from './diagnosis.js';

const AFTER_MS = 120;
let counter = 0;

/** Systems are asked for one after the other, so that a lesson full of them leaves Loftcoil free for other things. */
let line = Promise.resolve();
function inLine(deed) {
  const turn = line.then(deed, deed);
  line = turn.catch(() => {});
  return turn;
}

/** The field of such a question; its text is what was read, named and moved, as `read = 1 3; cause = 2; change = value; …`. */
export function mendField(step, key, text, lessonId) {
  const place = el('div', { class: 'mend' }, el('p', { class: 'quiet' }, 'Loading the system…'));
  const levers = [];
  let diagnosis = null;
  const state = { wanted: '', busy: false, timer: 0 };
  const moved = () => [diagnosis ? diagnosis.text() : '', ...levers.filter((lever) => lever.value() !== lever.found)
    .map((lever) => `${lever.change} = ${lever.value()}`)].filter(Boolean).join('; ');

  function touched() {
    remember(key, moved());
    for (const lever of levers) lever.mark();
    place.dispatchEvent(new Event('moved', { bubbles: true }));
    window.clearTimeout(state.timer);
    state.timer = window.setTimeout(refresh, AFTER_MS);
  }

  /** One question at a time: what was moved meanwhile is asked after the answer. */
  async function refresh() {
    if (state.busy) return;
    state.busy = true;
    try {
      do {
        state.wanted = moved();
        state.view = await inLine(() => api.mend(lessonId, step.id, state.wanted));
        show(place, state.view);
        if (diagnosis) diagnosis.show(state.view);
      } while (state.wanted !== moved());
      // Said with its name and only of what was moved: other systems on the page are silent.
      if (!state.view.refused.length && state.view.circulates) say(`${step.label}: ${state.view.circulates}`);
    } catch (trouble) {
      tell(place, [`The system cannot be shown: ${trouble.message}`]);
    } finally {
      state.busy = false;
    }
  }

  async function load(from) {
    try {
      const start = await inLine(() => api.mend(lessonId, step.id, from).catch(() => api.mend(lessonId, step.id, '')));
      diagnosis = start.readings.length ? diagnosisField(start, step.id, touched) : null;
      levers.splice(0, levers.length, ...start.levers.map((lever) => makeLever(lever, touched)));
      build(place, levers, () => { for (const lever of levers) lever.putBack(); touched(); });
      if (diagnosis) place.prepend(diagnosis.box);
      show(place, start);
    } catch (trouble) {
      clear(place).append(el('p', { class: 'trouble' }, `The system cannot be shown: ${trouble.message}`));
    }
  }

  return {
    box: place,
    text: moved,
    focus: () => { const first = place.querySelector('input, select'); if (first) first.focus(); },
    placed: () => whenNear(place, () => load(text)),
    // Once the cause is found, the levers are free.
    answered: (said) => { if (said.state === 'right' && !levers.length) load(moved()); },
  };
}

/** Does the deed once the place comes near the window: some systems take a second to reckon. */
function whenNear(place, deed) {
  const watch = new IntersectionObserver((seen) => {
    if (!seen.some((each) => each.isIntersecting)) return;
    watch.disconnect();
    deed();
  }, { rootMargin: '600px' });
  watch.observe(place);
}

function build(place, levers, putBack) {
  clear(place);
  if (!levers.length) return;
  place.append(
    el('fieldset', { class: 'mend-levers' }, el('legend', {}, 'What you can change'),
      ...levers.map((lever) => lever.box),
      el('button', { type: 'button', class: 'plain', onclick: putBack }, 'Put all back as found')),
    el('div', { class: 'mend-system' },
      el('p', { class: 'field-label' }, 'The system now'),
      el('div', { class: 'mend-refused', role: 'alert' }),
      el('div', { class: 'mend-drawn' }),
      el('p', { class: 'circulates' }),
      el('dl', { class: 'mend-figures' })));
}

function show(place, view) {
  const system = place.querySelector('.mend-system');
  if (!system) return;
  tell(place, view.refused);
  system.classList.toggle('stale', view.refused.length > 0);
  if (view.refused.length) return;
  clear(system.querySelector('.mend-drawn')).append(...[drawn(view.picture), numbers(view.picture)].filter(Boolean));
  system.querySelector('.circulates').textContent = view.circulates;
  clear(system.querySelector('.mend-figures')).append(
    ...view.figures.flatMap((each) => [el('dt', {}, each.label), el('dd', {}, each.value)]));
}

function tell(place, lines) {
  const box = place.querySelector('.mend-refused');
  if (!box) return;
  clear(box);
  if (lines.length) {
    box.append(el('div', { class: 'said said-wrong' }, sign('wrong'), el('div', {},
      el('p', { class: 'said-words' }, 'It cannot be built like that. The drawing shows the last that can.'),
      ...lines.map((line) => el('p', {}, line)))));
  }
}

function makeLever(lever, touched) {
  const made = lever.slider ? sliding(lever, touched) : choosing(lever, touched);
  counter += 1;
  const found = el('p', { class: 'found', id: `found-${counter}` });
  const mark = () => {
    const same = made.value() === lever.found;
    found.textContent = same ? 'as found' : `found at: ${lever.shownFound}`;
    made.box.classList.toggle('moved', !same);
  };
  made.box.append(found);
  const field = made.box.querySelector('input, select');
  field.setAttribute('aria-describedby', `${field.getAttribute('aria-describedby') || ''} ${found.id}`.trim());
  mark();
  return { ...made, change: lever.change, found: lever.found, mark };
}

function sliding(lever, touched) {
  const { start, by } = lever.slider;
  const slider = makeSlider(lever.slider, lever.value === lever.found ? null : Number(lever.value), touched);
  return {
    box: slider.box,
    value: () => (Math.abs(slider.shown() - start) < by / 1000 ? lever.found : String(slider.value())),
    putBack: () => slider.put(start),
  };
}

function choosing(lever, touched) {
  counter += 1;
  const name = `lever-${counter}`;
  const select = el('select', { id: name, onchange: touched },
    ...lever.options.map((option, n) => el('option', { value: option, selected: option === lever.value }, lever.shownOptions[n])));
  return {
    box: el('div', { class: 'slider choosing' }, el('label', { for: name }, lever.label), select),
    value: () => select.value,
    putBack: () => { select.value = lever.found; },
  };
}
