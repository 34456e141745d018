// What is said to an answer: right or not, a hint, the worked solution when it is due, and where the number is from.
import { clear, el, prose, sign } from './dom.js';
import { whenJudged } from './loop.js';
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

/** What the decision does to the design's dangers; filled in when the year is judged. Told by the panel, so silent here. */
function judgedLater(stands) {
  if (!stands) return null;
  const { safety } = stands;
  const place = el('div', { 'aria-live': 'off' }, el('p', {}, 'Your design now:'), safetyBox(safety));
  if (safety.open) whenJudged(place, (whole) => place.lastChild.replaceWith(safetyBox(whole)));
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
