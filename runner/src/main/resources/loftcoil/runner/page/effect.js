// What a change of the design comes to: figures before and after, cautions that come and go.
import * as api from './api.js';
import { el, say } from './dom.js';

/** With the year; where the design has been changed since, what this change did stays as it was told. */
export async function judgeEffect(place, quick) {
  try {
    const whole = await api.effect();
    if (whole.number !== quick.number) return;
    place.replaceChildren(...effectLines({ ...whole, moved: quick.moved }));
    if (whole.danger && whole.danger !== quick.danger) {
      place.prepend(el('p', { class: 'trouble' }, el('strong', {}, 'With starts and year: '), whole.danger));
      say(`With starts and year: ${whole.danger}`);
    }
  } catch { /* What was told at once stands. */ }
}

/** Figures before and after, cautions that came and that went, and what moved with it. */
export function effectLines(effect) {
  const lines = effect.lines.map((line) => el('tr', { class: `turn-${line.turn}` },
    el('th', { scope: 'row' }, line.label, line.unit ? el('span', { class: 'quiet' }, ` ${line.unit}`) : null),
    el('td', {}, line.before || 'none'), el('td', {}, line.after || 'none')));
  return [
    el('table', { class: 'effect-lines' }, el('caption', { class: 'unseen' }, 'What the change comes to'),
      el('thead', {}, el('tr', {}, ...['Figure', 'Before', 'After'].map((head) => el('th', { scope: 'col' }, head)))),
      el('tbody', {}, ...lines)),
    effect.open ? el('p', { class: 'quiet' }, effect.open) : null,
    found('Cautions that come with it', effect.raised),
    found('Dangers that stay and read otherwise now', effect.changed),
    found('Cautions that are gone', effect.settled),
    effect.moved.length ? el('p', {}, 'With it moved:') : null,
    effect.moved.length ? el('ul', {}, ...effect.moved.map((line) => el('li', {}, line))) : null,
  ].filter(Boolean);
}

function found(heading, list) {
  if (!list.length) return null;
  return el('details', { class: 'more' }, el('summary', {}, `${heading} (${list.length})`),
    el('ul', {}, ...list.map((each) => el('li', { 'data-came': each.code }, el('strong', {}, `${each.label}. `), each.text))));
}
