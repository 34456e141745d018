// Two designs side by side: both drawings, every figure before and after, cautions that come and go, each change by itself.
import { clear, el } from './dom.js';
import { figure } from './picture.js';
import { safetyBox } from './safety.js';

const TURNS = { same: '', better: 'better', worse: 'worse', different: 'changed', new: 'new', gone: 'gone' };

export function showSideBySide(place, both, take) {
  clear(place).append(...[
    el('h2', {}, 'Before and after'),
    safetyBox({ ...both.safety, findings: [], words: 'The new design. '.concat(both.safety.words) }),
    both.heat ? el('p', { class: 'heat-borrowed' }, el('strong', {}, 'Borrowed heat. '), both.heat) : null,
    both.noYear ? el('p', { class: 'trouble' }, both.noYear) : null,
    el('h3', {}, 'In one frame'),
    figure(both.change),
    el('div', { class: 'pair' },
      el('div', {}, figure(both.before, 'Before'), el('p', {}, both.beforeWords)),
      el('div', {}, figure(both.after, 'After'), el('p', {}, both.afterWords))),
    take,
    cautions('Cautions that come with it', both.raised, 'caution'),
    cautions('Cautions that are gone', both.settled, 'right'),
    cautions('Cautions that stay', both.staying, 'caution'),
    differences(both.differences),
    parts(both),
    el('h3', {}, 'Figures'),
    ...both.groups.map(group),
    both.year || both.noYear ? null : el('p', { class: 'quiet' }, 'The year is not marched here; “March the year too” adds it.'),
    ...effects(both.effects)].filter(Boolean));
}

function cautions(heading, list, kind) {
  if (!list.length) return null;
  return el('details', { class: 'cautions', open: kind === 'caution' && heading !== 'Cautions that stay' },
    el('summary', {}, `${heading} (${list.length})`), el('ul', {}, ...list.map((found) => el('li', { 'data-code': found.code }, el('strong', {}, `${found.label}. `), found.text))));
}

/** Each field in which the two differ, whether a figure follows from it or not. */
export function differences(list) {
  if (!list.length) return el('p', { class: 'quiet' }, 'The two designs are the same in all.');
  const frame = el('div', { class: 'table-frame', tabindex: '0', role: 'group', 'aria-label': 'What differs' });
  frame.append(el('table', { class: 'differences' },
    el('caption', { class: 'unseen' }, 'What differs'),
    el('thead', {}, el('tr', {}, ...['Where', 'What', 'Before', 'After'].map((head) => el('th', { scope: 'col' }, head)))),
    el('tbody', {}, ...list.map((each) => el('tr', {},
      el('th', { scope: 'row' }, each.part), el('td', {}, each.label || 'all of it'), el('td', {}, each.before), el('td', {}, each.after))))));
  return el('details', { class: 'figures', open: list.length < 12 },
    el('summary', {}, 'What differs ', el('span', { class: 'brief' }, list.length === 1 ? '1 thing' : `${list.length} things`)), frame);
}

/** What the rebuild buys and what it leaves over. */
function parts(both) {
  if (!both.parts.length) return null;
  const frame = el('div', { class: 'table-frame', tabindex: '0', role: 'group', 'aria-label': 'Parts of the rebuild' });
  frame.append(el('table', {},
    el('caption', { class: 'unseen' }, 'Parts of the rebuild'),
    el('thead', {}, el('tr', {}, ...['What becomes of it', 'How much', 'Part'].map((head) => el('th', { scope: 'col' }, head)))),
    el('tbody', {}, ...both.parts.map((line) => el('tr', {},
      el('th', { scope: 'row' }, line.fate), el('td', {}, line.amount), el('td', {}, line.part))))));
  return el('details', { class: 'figures', open: both.parts.length < 12 },
    el('summary', {}, 'Parts to buy and parts left over ', el('span', { class: 'brief' }, `${both.partsKept} lines of the list stay`)), frame);
}

function group(each) {
  const changed = each.changed === 0 ? 'all the same' : each.changed === 1 ? '1 changed' : `${each.changed} changed`;
  return el('details', { class: 'figures', open: each.changed > 0 && each.lines.length < 20 },
    el('summary', {}, each.words, ' ', el('span', { class: 'brief' }, changed)), table(each.words, each.lines));
}

function table(caption, lines) {
  const frame = el('div', { class: 'table-frame', tabindex: '0', role: 'group', 'aria-label': caption });
  frame.append(el('table', {},
    el('caption', { class: 'unseen' }, caption),
    el('thead', {}, el('tr', {}, ...['Figure', 'Before', 'After', 'Difference', 'Better or worse'].map((head) => el('th', { scope: 'col' }, head)))),
    el('tbody', {}, ...lines.map(row))));
  return frame;
}

function row(line) {
  const unit = line.unit ? el('span', { class: 'of' }, ` ${line.unit}`) : null;
  return el('tr', { class: `turn-${line.turn}` },
    el('th', { scope: 'row' }, line.label, unit),
    el('td', {}, line.before || 'none'), el('td', {}, line.after || 'none'),
    el('td', {}, line.difference), el('td', { class: 'turn' }, TURNS[line.turn]));
}

function effects(list) {
  if (!list.length) return [];
  return [el('h3', {}, 'Each change by itself'),
    ...list.map((effect) => el('div', { class: 'effect' }, el('h4', {}, effect.words), effectBody(effect)))];
}

function effectBody(effect) {
  if (effect.refused.length) {
    return el('div', {}, el('p', {}, 'It cannot be done alone:'), el('ul', {}, ...effect.refused.map((words) => el('li', {}, words))));
  }
  return effect.lines.length ? table(effect.words, effect.lines) : el('p', { class: 'quiet' }, 'None of the main figures changes.');
}
