// The things that can be changed in one part of the system: a number to type or a name to choose, with the old value beside it.
import { el, fittingCounts } from './dom.js';

/** A fold with the levers of one part; `changed` is told a lever's name and value, null where it is the old one again. */
export function leverBox(part, changed) {
  const moved = new Set();
  const count = el('span', { class: 'brief' });
  const tell = (name, value) => {
    if (value === null) moved.delete(name);
    else moved.add(name);
    count.textContent = moved.size ? `${moved.size} changed` : '';
    changed(name, value);
  };
  return el('details', { class: 'part' }, el('summary', {}, part.words, ' ', count),
    ...part.levers.map((lever) => row(lever, tell)), fittingCounts(part.counts ?? []));
}

function row(lever, tell) {
  const name = `lever-${lever.name.replace(/\W/g, '-')}`;
  const field = lever.options.length ? select(name, lever) : number(name, lever);
  const mark = el('span', { class: 'was quiet', id: `${name}-was` }, was(lever));
  const line = el('p', { class: 'lever' },
    el('label', { for: name }, lever.label), el('span', { class: 'lever-field' }, field,
      lever.unit ? el('span', { class: 'unit' }, lever.unit) : null), mark);
  const move = () => {
    const value = field.value.trim();
    const same = value === '' || value === lever.current;
    line.classList.toggle('moved', !same);
    tell(lever.name, same ? null : value);
  };
  field.addEventListener(lever.options.length ? 'change' : 'input', move);
  return line;
}

function was(lever) {
  const range = lever.options.length ? '' : `; allowed: ${lever.allowed}`;
  return `was ${lever.current}${range}`;
}

function number(name, lever) {
  const field = el('input', {
    type: 'text', id: name, autocomplete: 'off', maxlength: '60', 'aria-describedby': `${name}-was`,
  });
  field.value = lever.current;
  return field;
}

function select(name, lever) {
  const options = lever.options.includes(lever.current) ? lever.options : [lever.current, ...lever.options];
  const field = el('select', { id: name, 'aria-describedby': `${name}-was` },
    ...options.map((option) => el('option', { value: option }, option)));
  field.value = lever.current;
  return field;
}
