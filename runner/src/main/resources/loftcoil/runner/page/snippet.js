// A sheet of Java: the editor, a slider where the lesson has one, and what came of running it.
import * as api from './api.js';
import { el, hold, isHeld, say } from './dom.js';
import { spokenRun } from './spoken.js';
import { running } from './running.js';
import { makeEditor } from './editor.js';
import { makeSlider } from './slider.js';
import { makeCoarse } from './coarse.js';
import { showBanner } from './banner.js';
import { showRun } from './result.js';
import { showTried } from './loop.js';
import { unitsNow } from './units.js';
import { forget, keepLater, keptNow, remember, remembered } from './keep.js';

export function snippetStep(step, { lesson }) {
  const name = step.id.replace(/[-_]+/g, ' ');
  const unsent = remembered(`code ${lesson.id}/${step.id}`);
  const parts = {
    frame: el('div', { class: 'code' }),
    result: el('div', { class: 'result', role: 'group', 'aria-label': `What ${name} came to` }),
    status: el('span', { class: 'busy', role: 'status' }),
    seconds: el('span', { class: 'busy', 'aria-hidden': 'true' }),
    run: el('button', { type: 'button', class: 'main', 'aria-keyshortcuts': 'Control+Enter' }, 'Run'),
    stop: el('button', { type: 'button', hidden: true }, 'Stop'),
    back: el('button', { type: 'button', class: 'plain', hidden: true }, 'Put back the lesson’s text'),
    undo: el('button', { type: 'button', class: 'plain', hidden: true }, 'Undo putting back'),
    all: el('button', { type: 'button', class: 'plain', hidden: true }, 'Show all lines'),
  };
  const sheet = el('section', { class: 'sheet', 'aria-label': `Java: ${name}` },
    el('p', { class: 'sheet-name' }, name),
    unitsNow() === 'us' ? el('p', { class: 'quiet java-units' }, 'Java reckons in metric units; plots and sliders are in yours.') : null,
    parts.frame,
    el('div', { class: 'sheet-foot' }, parts.run, parts.stop, el('span', { class: 'keys' }, 'Ctrl+Enter runs, Esc leaves'),
      parts.status, parts.seconds, parts.all, parts.back, parts.undo));
  const state = { step, lesson, parts, name, text: unsent ?? step.source, slider: null, coarse: null, editor: null, before: '' };
  if (step.drag) {
    state.slider = makeSlider(step.drag, step.dragged && step.dragged[step.drag.variable], () => drag(state));
    state.coarse = makeCoarse(parts.result, step.drag, () => ({ lesson: lesson.id, step: step.id, source: state.editor.text() }));
    sheet.append(state.slider.box);
  }
  sheet.append(parts.result);
  connect(state, sheet);
  if (unsent !== null && unsent !== step.source) keepLater(lesson.id, step.id, unsent);
  return sheet;
}

function connect(state, sheet) {
  const { step, lesson, parts } = state;
  parts.run.addEventListener('click', () => run(state));
  parts.stop.addEventListener('click', () => api.stop().catch(() => {}));
  parts.back.addEventListener('click', () => putBack(state));
  parts.undo.addEventListener('click', () => undo(state));
  sheet.addEventListener('placed', () => {
    state.editor = makeEditor(parts.frame, {
      label: `Java: ${state.name}. Control and Enter runs it, Escape stops what runs or leaves the editor.`,
      source: state.text, lesson: lesson.id, step: step.id,
      changed: (text) => edited(state, text),
      run: () => run(state),
      leave: () => { if (!isHeld(parts.run)) parts.run.focus(); },
    });
    fold(state);
    offerBack(state);
    if (step.last) show(state, step.last);
    else if (step.ran) {
      parts.result.append(el('p', { class: 'quiet' }, 'You ran this before. Run it to see again what it comes to.'));
    }
  }, { once: true });
}

/** Preparation out of sight, and a button that brings it back for who works by keyboard. */
function fold({ step, parts, editor, text }) {
  if (!step.folds || !step.folds.length || text !== step.source) return;
  const showAll = editor.fold(step.folds, () => { parts.all.hidden = true; });
  parts.all.hidden = false;
  parts.all.addEventListener('click', () => { showAll(); parts.all.hidden = true; editor.focus(); });
}

function edited(state, text) {
  state.text = text;
  state.parts.undo.hidden = true;
  offerBack(state);
  keepLater(state.lesson.id, state.step.id, text);
}

function offerBack(state) {
  state.parts.back.hidden = state.text === state.step.original;
}

function dragged(state) {
  return state.slider ? { [state.step.drag.variable]: state.slider.value() } : {};
}

function show(state, result, how = {}) {
  if (state.coarse) state.coarse.whole(result.millis);
  state.editor.mark(result.problems.map((problem) => problem.line));
  showRun(state.parts.result, result, {
    goTo: (line, column) => state.editor.goTo(line, column), chartsFirst: state.slider !== null, ...how,
  });
}

async function run(state) {
  const { parts, lesson, step } = state;
  if (isHeld(parts.run)) return;
  const calm = busy(parts);
  const source = state.editor.text();
  try {
    const result = await api.run(lesson.id, step.id, source, dragged(state));
    if (state.text === source && !result.unsaved) keptNow(lesson.id, step.id);
    show(state, result);
    say(spokenRun(result));
  } catch (trouble) {
    notRun(state, trouble);
  } finally {
    calm();
  }
}

function notRun(state, trouble) {
  state.coarse?.whole();
  if (api.isGone(trouble)) {
    remember(`code ${state.lesson.id}/${state.step.id}`, state.text);
    showBanner(() => {});
  }
  const old = state.parts.result.querySelector('.not-run');
  if (old) old.remove();
  state.parts.result.prepend(el('p', { class: 'not-run', role: 'alert' }, `Not run: ${trouble.message}`));
}

/** Shows that it runs, and for how long once that is worth saying; gives back what ends it. */
function busy(parts) {
  const start = performance.now();
  const stopHadFocus = () => document.activeElement === parts.stop;
  hold(parts.run, true);
  const ended = running(() => api.stop().catch(() => {}));
  const tick = () => {
    const seconds = Math.floor((performance.now() - start) / 1000);
    parts.stop.hidden = false;
    // Said once; the seconds are for the eye alone.
    if (!parts.status.textContent) parts.status.textContent = 'Running, Esc stops it';
    parts.seconds.textContent = seconds > 0 ? `${seconds} s` : '';
  };
  const first = window.setTimeout(tick, 300);
  const timer = window.setInterval(tick, 1000);
  return () => {
    window.clearTimeout(first);
    window.clearInterval(timer);
    ended();
    hold(parts.run, false);
    if (stopHadFocus()) parts.run.focus();
    parts.stop.hidden = true;
    parts.status.textContent = '';
    parts.seconds.textContent = '';
  };
}

/** Dragging: one run at a time, and always the newest value next. */
async function drag(state) {
  state.wanted = true;
  // Where no coarse picture comes, the whole one still does.
  state.coarse.moved(state.slider.value()).catch(() => {});
  if (state.dragging) return;
  state.dragging = true;
  const ended = running(() => api.stop().catch(() => {}));
  try {
    while (state.wanted) {
      state.wanted = false;
      const source = state.editor.text();
      // The drawing is no part of the run: where it does not come, the plot still does.
      showTried(state.lesson.id, state.step.id, state.slider.value()).catch(() => {});
      const result = await api.run(state.lesson.id, state.step.id, source, dragged(state));
      show(state, result, { steady: true });
      if (state.wanted) state.coarse.moved(state.slider.value()).catch(() => {});
      else sayAtRest(state, result);
      // Once it rests, a value ahead at a time, until it is moved again.
      while (!state.wanted && await state.coarse.ahead(state.slider.value()));
    }
  } catch (trouble) {
    notRun(state, trouble);
  } finally {
    ended();
    state.dragging = false;
  }
}

const REST_MS = 700;

/** What the slider came to, once it rests: each stop on the way would drown the last. */
function sayAtRest(state, result) {
  window.clearTimeout(state.rest);
  state.rest = window.setTimeout(() => say(spokenRun(result)), REST_MS);
}

async function putBack(state) {
  const { parts, lesson, step } = state;
  const before = state.editor.text();
  try {
    const fresh = await api.putBack(lesson.id, step.id);
    if (!fresh.unsaved) keptNow(lesson.id, step.id);
    state.before = before;
    setText(state, fresh.source);
    parts.undo.hidden = false;
    parts.undo.focus();
    say('The lesson’s text is back. Undo brings yours again.');
  } catch (trouble) {
    notRun(state, trouble);
  }
}

function undo(state) {
  setText(state, state.before);
  keepLater(state.lesson.id, state.step.id, state.before);
  state.parts.undo.hidden = true;
  state.editor.focus();
  say('Your text is back.');
}

function setText(state, text) {
  state.text = text;
  state.editor.setText(text);
  state.editor.mark([]);
  offerBack(state);
  if (text === state.step.original) forget(`code ${state.lesson.id}/${state.step.id}`);
}
