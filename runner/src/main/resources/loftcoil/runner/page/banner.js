// The strips on top: Loftcoil does not answer, or work is not in the learner's folder. Typed text stays where it is;
// trying again goes on from there.
import * as api from './api.js';
import { clear, el, id } from './dom.js';

const EVERY_MS = 4000;
let timer = 0;
let then = [];

/** Shows the strip, and calls `next` once Loftcoil answers again. */
export function showBanner(next = () => {}) {
  then.push(next);
  const banner = id('banner');
  if (!banner.hidden) return;
  clear(banner).append(
    el('p', {}, el('strong', {}, 'Loftcoil does not answer. '),
      'It may have been closed in its terminal window. What you have typed is kept here. ',
      'If it was started anew, open the address it has printed.'),
    el('button', { type: 'button', onclick: tryAgain }, 'Try again'));
  banner.hidden = false;
  timer = window.setInterval(tryAgain, EVERY_MS);
}

async function tryAgain() {
  try {
    await api.course();
  } catch (trouble) {
    if (api.isGone(trouble)) return;
  }
  window.clearInterval(timer);
  id('banner').hidden = true;
  const waiting = then;
  then = [];
  for (const next of waiting) next();
}

/** What is not saved: by its name the words that say why, and what saves it. */
const unsaved = new Map();
let unsavedTimer = 0;

/** Shows, until `saved(name)`, that something is not saved; `again` is tried every few seconds and by a button. */
export function showUnsaved(name, words, again) {
  unsaved.set(name, { words, again });
  if (!unsavedTimer) unsavedTimer = window.setInterval(saveAgain, EVERY_MS);
  drawUnsaved();
}

/** Takes back what `showUnsaved` has said of that name. */
export function saved(name) {
  if (unsaved.delete(name)) drawUnsaved();
}

function drawUnsaved() {
  const strip = id('unsaved');
  strip.hidden = unsaved.size === 0;
  if (strip.hidden) {
    window.clearInterval(unsavedTimer);
    unsavedTimer = 0;
    strip.dataset.words = '';
    return;
  }
  const words = [...new Set([...unsaved.values()].map((each) => each.words))].join(' ');
  // Said anew only where it has changed: a screen reader would read it out at every try.
  if (strip.dataset.words === words) return;
  strip.dataset.words = words;
  clear(strip).append(
    el('p', {}, el('strong', {}, 'Your work is not saved. '), words,
      ' It stays here while this page and Loftcoil are open, and you can go on.'),
    el('button', { type: 'button', onclick: saveAgain }, 'Try saving again'));
}

function saveAgain() {
  for (const { again } of [...unsaved.values()]) again();
}

async function saveFolder() {
  try {
    await api.save();
    saved('folder');
  } catch (trouble) {
    if (api.isGone(trouble)) showBanner(saveFolder);
  }
}

window.addEventListener('unsaved', (event) => showUnsaved('folder', event.detail, saveFolder));
