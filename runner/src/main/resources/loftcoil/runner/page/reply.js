// What is said to an answer: right or not, a hint, the worked solution when it is due, and where the number is from.
import * as api from './api.js';
import { clear, el, prose, sign } from './dom.js';
import { effectLines, judgeEffect } from './effect.js';
import { watchVerdict } from './loop.js';
import { safetyBox } from './safety.js';

const SIGNS = { right: 'right', decided: 'noted', wrong: 'wrong', unread: 'wrong', noted: 'noted' };

export function showReply(place, reply) {
  clear(place).append(el('div', { class: `said said-${reply.state}` },
    sign(SIGNS[reply.state] || 'noted'),
    el('div', {},
      el('p', { class: 'said-words' }, reply.words),
      judgedLater(reply.stands),
      reply.hintHtml ? prose(reply.hintHtml) : null,
      tries(reply),
      worked(reply),
      source(reply))));
}

/** What the decision does to the design's dangers, followed as more is judged and decided. Told by the panel, so silent here. */
function judgedLater(stands) {
  if (!stands) return null;
  const box = el('div', {}, safetyBox(stands.safety));
  // What is open is said once, under the verdict.
  const told = stands.effect?.open === stands.safety.open ? { ...stands.effect, open: '' } : stands.effect;
  const effect = el('div', {}, ...(told ? effectLines(told) : []));
  const place = el('div', { 'aria-live': 'off' }, effect, el('p', {}, 'Your design now:'), box);
  let waits = Boolean(stands.effect);
  // It is not in the page before this is done.
  window.queueMicrotask(() => watchVerdict(place, (safety, whole) => {
    box.replaceChildren(safetyBox(safety));
    if (!whole || !waits) return;
    waits = false;
    judgeEffect(effect, stands.effect);
  }, waits));
  return place;
}

function tries(reply) {
  const { wrong, left } = reply.tries;
  if (reply.state !== 'wrong' || !left) return null;
  const times = wrong === 1 ? '1 try' : `${wrong} tries`;
  return el('p', { class: 'quiet' }, `${times} so far. The worked solution opens after ${left} more.`);
}

/** Where the number is from and how far off is right: for who asks. */
function source(reply) {
  if (!reply.source) return null;
  return el('details', { class: 'source' }, el('summary', {}, 'Source'), el('p', {}, reply.source));
}

function worked(reply) {
  if (!reply.workedHtml) return null;
  return el('details', { class: 'worked', open: reply.state === 'wrong' },
    el('summary', {}, 'Worked solution'), prose(reply.workedHtml));
}
