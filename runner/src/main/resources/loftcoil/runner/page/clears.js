// What would clear the dangers of the design: a search that the learner starts, with its progress and a stop.
import * as api from './api.js';
import { clear, el, say } from './dom.js';
import { workBox } from './work.js';

const AGAIN_MS = 700;

/**
 * Adds to a box of the verdict what clears its dangers; nothing where it has none.
 * @param follow takes a way of a danger into the design, by its code and number
 */
export function offerClears(box, follow) {
  const dangers = [...box.querySelectorAll('li[data-severity="danger"]')];
  if (!dangers.length) return;
  const foot = el('div', { class: 'clears-foot' });
  box.lastElementChild.append(foot);
  const at = { box, dangers, foot, follow, work: null };
  at.show = (found) => shown(found, at);
  api.clears().then(at.show, (trouble) => failed(at, trouble));
}

function shown(found, at) {
  if (!at.box.isConnected) return;
  for (const item of at.dangers) under(item, found, at);
  const begin = (words) => el('button', { type: 'button', onclick: () => go(api.searchClears, at) }, words);
  if (found.state === 'searching') return searching(found, at);
  ended(at);
  if (found.words) at.foot.append(el('p', {}, found.words));
  if (found.state === 'none') at.foot.append(begin('Search what would clear them'));
  if (found.state === 'stopped') at.foot.append(begin('Search again'));
}

function searching(found, at) {
  if (!at.work) {
    at.work = workBox('Searching what would clear them.', () => go(api.stopClears, at));
    const here = at.foot.contains(document.activeElement);
    clear(at.foot).append(at.work.box);
    say('Searching what would clear the dangers. It can be stopped.');
    if (here) at.work.box.querySelector('button').focus();
  }
  if (found.of) at.work.far((100 * found.done) / found.of, `Searching what would clear them: ${found.done} of ${found.of}.`);
  window.setTimeout(() => at.box.isConnected && api.clears().then((next) => told(next, at), (trouble) => failed(at, trouble)), AGAIN_MS);
}

function told(found, at) {
  if (found.state === 'done') say('The search is done: what would clear each danger stands under it.');
  at.show(found);
}

function go(asked, at) {
  asked().then((found) => told(found, at), (trouble) => failed(at, trouble));
}

/** The box goes with the search. */
function ended(at) {
  if (at.work) at.work.done();
  at.work = null;
  clear(at.foot);
}

function failed(at, trouble) {
  ended(at);
  at.foot.append(el('p', { class: 'trouble' }, `What would clear them could not be searched: ${trouble.message}`));
}

/** What was found, under the danger it is for. */
function under(item, found, at) {
  item.querySelector('.clears')?.remove();
  const danger = found.dangers.find((each) => each.code === item.dataset.code);
  if (!danger) return;
  item.append(el('div', { class: 'clears' },
    el('p', {}, danger.head), list(danger, danger.ways, 0, at),
    danger.rarerHead && el('p', {}, danger.rarerHead), list(danger, danger.rarer, danger.ways.length, at)));
}

function list(danger, items, from, at) {
  return items.length ? el('ul', {}, ...items.map((words, number) => el('li', {}, words, ' ', taker(danger.code, from + number, words, at)))) : null;
}

/** Takes one way into the design. */
function taker(code, way, words, at) {
  const button = el('button', { type: 'button', class: 'plain', 'aria-label': `Take into my design: ${words}` }, 'Take into my design');
  button.addEventListener('click', async () => {
    button.disabled = true;
    try {
      await at.follow(code, way);
    } catch (trouble) {
      button.disabled = false;
      button.after(el('p', { class: 'trouble', role: 'alert' }, `Not taken: ${trouble.message}`));
    }
  });
  return button;
}
