// The strip on top when Loftcoil does not answer. Typed text stays where it is; trying again goes on from there.
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
