// Keeps edited snippets: a while after the last key, when the page is left, and again once Loftcoil answers.
import * as api from './api.js';
import { saved, showBanner, showUnsaved } from './banner.js';

const AFTER_MS = 800;
const pending = new Map();

/** Remembers that this text is to be kept. */
export function keepLater(lesson, step, source) {
  const key = `${lesson}/${step}`;
  drop(key);
  const timer = window.setTimeout(() => send(key), AFTER_MS);
  pending.set(key, { lesson, step, source, timer });
  remember(`code ${key}`, source);
}

/** Forgets what was to be kept, since it has been kept by other means. */
export function keptNow(lesson, step) {
  drop(`${lesson}/${step}`);
  saved(`code ${lesson}/${step}`);
  forget(`code ${lesson}/${step}`);
}

async function send(key, leaving = false) {
  const { lesson, step, source } = pending.get(key) || {};
  if (source === undefined) return;
  try {
    await api.keep(lesson, step, source, leaving);
    if (pending.get(key)?.source === source) keptNow(lesson, step);
    saved(`code ${key}`);
  } catch (trouble) {
    if (api.isGone(trouble)) showBanner(() => send(key));
    else if (trouble.status === 503) window.setTimeout(() => send(key), AFTER_MS);
    else showUnsaved(`code ${key}`, trouble.message, () => send(key));
  }
}

function drop(key) {
  if (pending.has(key)) window.clearTimeout(pending.get(key).timer);
  pending.delete(key);
}

window.addEventListener('pagehide', () => {
  for (const key of pending.keys()) send(key, true);
});

/** Text typed but not sent stays with this window, even over a reload. */
export function remember(key, text) {
  try {
    window.sessionStorage.setItem(key, text);
  } catch { /* Storage is full or shut: the text still stands in its field. */ }
}

export function remembered(key) {
  try {
    return window.sessionStorage.getItem(key);
  } catch {
    return null;
  }
}

export function forget(key) {
  try {
    window.sessionStorage.removeItem(key);
  } catch { /* Nothing was kept. */ }
}
