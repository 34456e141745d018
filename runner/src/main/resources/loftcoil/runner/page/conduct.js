// What to do in the worst hour, and before a fire: large, in the order in which somebody looks for it.
import { arrive, clear, el, sign } from './dom.js';

/** The rules for which nobody has a minute to spare. */
const GRAVEST = ['fumes', 'steam'];

export function showConduct(main, table) {
  clear(main).append(el('article', { class: 'conduct' },
    el('h1', {}, table.title),
    ...table.rules.map(rule),
    el('p', { class: 'quiet' }, table.worth)));
  arrive(main);
}

function rule(each) {
  const kind = GRAVEST.includes(each.code) ? 'danger' : 'note';
  return el('section', { class: `warning ${kind}`, 'data-code': each.code },
    sign(kind === 'danger' ? 'danger' : 'noted'),
    el('div', {}, el('h2', {}, each.when), el('p', {}, each.act)));
}
