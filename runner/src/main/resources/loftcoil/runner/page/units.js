// Whose units everything is shown in: asked for once, changed at the top at any time, kept in the learner's folder.
import * as api from './api.js';
import { clear, el, id, say } from './dom.js';
import { showBanner } from './banner.js';

const UNITS = [['metric', 'Metric', 'm, L, kg, °C'], ['us', 'US', 'ft and in, gal, lb, °F']];
let later = false;

/** Those that are shown now. */
export function unitsNow() {
  return document.documentElement.dataset.units ?? 'metric';
}

/** Brings the chooser and, on a first visit, the question in step with the course; `changed` draws the page anew. */
export function showUnits(course, changed) {
  document.documentElement.dataset.units = course.units;
  const place = id('units');
  if (!place.firstChild) {
    const field = el('select', { id: 'units-choice', 'aria-label': 'Units', onchange: () => choose(field.value, changed) },
      ...UNITS.map(([code, words]) => el('option', { value: code }, words)));
    place.append(el('label', { for: 'units-choice' }, 'Units'), field);
  }
  id('units-choice').value = course.units;
  ask(course, changed);
}

function ask(course, changed) {
  const strip = id('units-ask');
  strip.hidden = course.unitsSaid || later;
  if (strip.hidden || strip.firstChild) return;
  strip.append(
    el('p', { id: 'units-asked' }, 'Which units do you work in? You can change it at the top at any time.'),
    el('p', { class: 'units-answers' },
      ...UNITS.map(([code, words, such]) => el('button', { type: 'button', onclick: () => choose(code, changed) }, `${words}: ${such}`)),
      el('button', { type: 'button', class: 'plain', onclick: () => { later = true; strip.hidden = true; } }, 'Not now')));
}

async function choose(code, changed) {
  try {
    const course = await api.units(code);
    showUnits(course, changed);
    clear(id('units-ask'));
    await changed();
    say(`Units: ${UNITS.find(([each]) => each === code)[1]}.`);
  } catch (trouble) {
    id('units-choice').value = unitsNow();
    if (api.isGone(trouble)) showBanner(() => choose(code, changed));
    else say(trouble.message);
  }
}
