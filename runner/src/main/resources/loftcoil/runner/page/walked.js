// What is told line by line: the pieces of a run of pipe, the taps, and what people do with hot water.
import * as api from './api.js';
import { el } from './dom.js';
import { workBox } from './work.js';

const PIECE = [
  { name: 'name', words: 'Name', kind: 'long' },
  { name: 'way', words: 'Leads', options: ['up', 'down', 'along'] },
  { name: 'length', words: 'Length' },
  { name: 'slope', words: 'Climbs or falls' },
  { name: 'heading', words: 'Turns' },
  { name: 'elbows90', words: 'Elbows of 90°', kind: 'short' },
  { name: 'elbows45', words: 'Elbows of 45°', kind: 'short' },
  { name: 'tube', words: 'Tube', kind: 'long' },
  { name: 'lagging', words: 'Lagging', kind: 'long' },
  { name: 'laggingThickness', words: 'Thick' },
  { name: 'around', words: 'Where it runs' },
  { name: 'measured', words: 'Length is', options: ['measured', 'guessed'] },
];

const TAP = [
  { name: 'name', words: 'Name', kind: 'long' },
  { name: 'level', words: 'Mouth above floor' },
  { name: 'tube', words: 'Tube', kind: 'long' },
  { name: 'length', words: 'Length of pipe' },
  { name: 'elbows90', words: 'Elbows of 90°', kind: 'short' },
  { name: 'mixer', words: 'Mixing valve set to' },
  { name: 'from', words: 'Pipe comes from', options: ['tank', 'shared pipe'] },
];

/** A table of pieces, and below it whether they end where they have to. */
export function runTable(view, run) {
  const closing = el('div', { role: 'status' });
  const trouble = el('div', { role: 'alert' });
  const showClosing = (now) => {
    closing.replaceChildren(el('p', { class: now.closes ? '' : 'trouble' }, now.words),
      ...(now.moved.length ? [el('ul', { class: 'mends' }, ...now.moved.map((moved) => el('li', {}, moved)))] : []),
      ...(now.mends.length ? [el('p', {}, 'What may be wrong:'), el('ul', { class: 'mends' }, ...now.mends.map((mend) => el('li', {}, mend)))] : []));
  };
  const table = lines(`run-${run.code}`, PIECE, run.pieces, { one: 'Piece', more: 'Another piece' }, (rows) => {
    const told = rows.filter((row) => row.length.trim());
    trouble.replaceChildren();
    const waiting = rows.findIndex((row) => !row.length.trim() && row.name.trim());
    if (waiting >= 0) trouble.replaceChildren(el('p', { class: 'quiet' }, `Piece ${waiting + 1} counts as soon as it has a length.`));
    return view.ask(() => api.surveyWalk(run.code, told), (faults) => refused(trouble, faults));
  });
  view.rows.set(`run-${run.code}`, { update: showClosing });
  showClosing(run);
  return el('div', {}, el('p', { class: 'quiet' }, `Climbs or falls, for a piece that leads along: ${view.house.such.slopes} (a length is how much higher its far end is). Turns: left, right, back, straight, or a compass direction such as 90 or SE. Where it runs: room, loft, flue, outdoors, or a temperature. Blank: as the piece before.`),
    table, closing, trouble);
}

const TRUNK = [['tube', 'Tube of that pipe'], ['length', 'Length of a pipe from the tank that several taps share; blank where there is none'], ['elbows90', 'Its elbows of 90°']];

/** The pipe that several taps share, and a table of taps. */
export function tapsTable(view, station) {
  const trouble = el('div', { role: 'alert' });
  const waits = el('p', { class: 'quiet', role: 'status' });
  const trunk = TRUNK.map(([name, words]) => {
    const field = el('input', { type: 'text', id: `trunk-${name}`, autocomplete: 'off', maxlength: '60' });
    field.value = station.trunk[name];
    return [name, words, field];
  });
  const table = lines('taps', TAP, station.taps, { one: 'Tap', more: 'Another tap' }, async (rows) => {
    trouble.replaceChildren();
    waits.textContent = '';
    const told = rows.filter((row) => row.name.trim());
    const shared = Object.fromEntries(trunk.map(([name, , field]) => [name, field.value]));
    if (!told.every((row) => row.level.trim() && row.length.trim() && row.tube.trim())) {
      waits.textContent = 'Kept as soon as each tap has its mouth, tube and length.';
      return false;
    }
    if (shared.length.trim() && !shared.tube.trim()) {
      waits.textContent = 'Kept as soon as the shared pipe has its tube.';
      return false;
    }
    return view.ask(() => api.surveyTaps(shared, told), (lines) => refused(trouble, lines));
  });
  trunk.forEach(([, , field]) => field.addEventListener('change', table.keepAll));
  const [tube, length, elbows] = trunk.map(([name, words, field]) => el('div', { class: 'asked' },
    el('label', { for: `trunk-${name}` }, words), el('span', { class: 'field' }, field)));
  return el('div', {}, length, tube, elbows, table, waits, trouble);
}

/** What the page itself refuses. */
function alone(line) {
  return [{ line, said: line }];
}

function refused(place, told) {
  place.replaceChildren(el('p', { class: 'trouble' }, 'Not taken:'), el('ul', {}, ...told.map((one) => el('li', {}, placed(one)))));
}

const RUNS = { hotLegs: 'Hot pipe', coldLegs: 'Cold pipe', taps: 'Taps' };
const COLUMNS = {
  lengthM: 'length', slopeMmPerM: 'slope', heading: 'heading', elbow90: 'elbows90', elbow45: 'elbows45', thicknessMm: 'laggingThickness',
  aroundC: 'around', material: 'lagging', levelM: 'level', mixerC: 'mixer',
};

/** A refusal with its place as the table has it, the line and the column, or else in words: never the name in a design's file. */
export function placed({ line, said }) {
  const found = /^(hotLegs|coldLegs|taps)(?:\[(\d+)\])?(?:\.([\w.]+))?: (.*)$/s.exec(line);
  if (!found) return said;
  const [, run, at, path, words] = found;
  const last = (path ?? '').split('.').pop();
  const column = (run === 'taps' ? TAP : PIECE).find(({ name }) => name === (COLUMNS[last] ?? last));
  return `${[RUNS[run], at === undefined ? '' : `${run === 'taps' ? 'tap' : 'piece'} ${Number(at) + 1}`, column ? `“${column.words}”` : ''].filter(Boolean).join(', ')}: ${words}`;
}

/** Cards of fields, one for each piece or tap, that are kept whole after each change: all of one is seen at once at any width. */
function lines(name, columns, rows, { one, more }, keep) {
  const body = el('div', { class: 'walked', role: 'list' });
  const keepAll = () => keep([...body.children].map((row) => row.read()));
  const add = (row) => body.append(line(name, columns, row, body, one, keepAll));
  rows.forEach(add);
  if (!rows.length) add({});
  number(body, one);
  const made = el('div', {}, body,
    el('p', {}, el('button', {
      type: 'button',
      onclick: () => { add({}); number(body, one); body.lastElementChild.querySelector('input, select').focus(); },
    }, more)));
  made.keepAll = keepAll;
  return made;
}

let lastField = 0;

function line(name, columns, row, body, one, keepAll) {
  const fields = columns.map((column) => {
    const id = `${name}-${column.name}-${lastField += 1}`;
    const field = column.options
      ? el('select', { id, name: column.name }, ...column.options.map((option) => el('option', { value: option }, option)))
      : el('input', { type: 'text', id, name: column.name, autocomplete: 'off', maxlength: '80' });
    field.value = row[column.name] ?? (column.options ? column.options[0] : '');
    field.addEventListener('change', keepAll);
    return [column, field];
  });
  const out = el('button', { type: 'button', class: 'take-out' }, 'Take out');
  const made = el('div', { class: 'walked-line', role: 'listitem' },
    el('div', { class: 'walked-head' }, el('strong', {}), out),
    el('div', { class: 'walked-fields' }, ...fields.map(([column, field]) => el('div', { class: `walked-field ${column.kind ?? ''}` },
      el('label', { for: field.id }, column.words, el('span', { class: 'unseen line-number' })), field))));
  out.addEventListener('click', () => {
    const next = made.nextElementSibling ?? made.previousElementSibling;
    made.remove();
    if (!body.children.length) body.append(line(name, columns, {}, body, one, keepAll));
    number(body, one);
    (next ?? body.firstElementChild).querySelector('input').focus();
    keepAll();
  });
  made.read = () => Object.fromEntries(fields.map(([column, field]) => [column.name, field.value]));
  return made;
}

/** The lines below one that was taken out move up, and so do their names. */
function number(body, one) {
  [...body.children].forEach((row, at) => {
    const words = `${one} ${at + 1}`;
    row.querySelector('strong').textContent = words;
    row.querySelector('.take-out').setAttribute('aria-label', `Take out ${words}`);
    row.querySelectorAll('.line-number').forEach((place) => { place.textContent = `, ${words}`; });
  });
}

/** Habits as people say them; they become the draws of a mean day. Drawn anew when the taps become others. */
export function habitsForm(view) {
  const place = el('div', {});
  let taps = '';
  const show = (house) => {
    const now = house.habits.map((habit) => habit.taps.join('|')).join('|');
    if (taps === now && place.firstChild) return;
    taps = now;
    place.replaceChildren(habitQuestions(view, house.habits));
  };
  view.rows.set('habits', { update: show });
  show(view.house);
  return place;
}

function habitQuestions(view, asked) {
  if (!asked.length) return el('p', {}, 'Tell the taps first, then what is drawn at them.');
  const said = el('p', { role: 'status' });
  const trouble = el('div', { role: 'alert' });
  const fields = asked.map((habit) => [habit.name, habit.label, habitField(habit)]);
  const tell = async () => {
    trouble.replaceChildren();
    said.textContent = '';
    const habits = Object.fromEntries(fields.map(([name, , field]) => [name, field.value]));
    if (await view.ask(() => api.surveyHabits(habits), (lines) => refused(trouble, lines))) said.textContent = 'The draws of a mean day follow these habits now.';
  };
  return el('div', {}, ...fields.map(([name, words, field]) => el('div', { class: 'asked' },
    el('label', { for: `habit-${name}` }, words), el('span', { class: 'field' }, field))),
  el('p', {}, el('button', { type: 'button', onclick: tell }, 'Work out the draws')), said, trouble);
}

function habitField(habit) {
  const name = `habit-${habit.name}`;
  const field = habit.taps.length
    ? el('select', { id: name }, ...habit.taps.map((tap) => el('option', { value: tap }, tap)))
    : el('input', { type: 'text', id: name, autocomplete: 'off', maxlength: '20' });
  field.value = habit.now;
  return field;
}

const MOST_BYTES = 900_000;
const SEASONS = ['winter', 'spring', 'summer', 'autumn'];

/** Sun and air from a weather file that the page reads itself, or as people remember them. */
export function climateForm(view, changed) {
  const trouble = el('div', { role: 'alert' });
  const said = el('p', { role: 'status' });
  const told = async (work, words) => {
    trouble.replaceChildren();
    if (await view.ask(work, (lines) => refused(trouble, lines))) { await changed(); document.querySelector('#climate-said').textContent = words; }
  };
  const file = el('input', { type: 'file', id: 'climate-file', accept: '.epw,.csv,.txt' });
  file.addEventListener('change', async () => {
    const [chosen] = file.files;
    if (!chosen) return;
    let ended = false;
    const box = workBox(`Reading ${chosen.name}.`, () => { ended = true; box.done(); });
    trouble.replaceChildren(box.box);
    const text = thinned(await chosen.text());
    box.done();
    if (ended) return refused(trouble, alone(`${chosen.name} was not taken: stopped.`));
    if (text.length > MOST_BYTES) return refused(trouble, alone(`${chosen.name}: too long for a weather file`));
    await told(() => api.surveyClimate(text), `Sun and air are those of ${chosen.name} now.`);
  });
  const skies = SEASONS.map((season) => {
    const field = el('select', { id: `sky-${season}` }, ...['clear', 'mixed', 'cloudy', 'dull'].map((sky) => el('option', { value: sky }, sky)));
    field.value = 'mixed';
    return [season, `Sky in ${season}`, field];
  });
  const means = [['warmest', 'Mean of the warmest month, day and night'], ['coldest', 'Mean of the coldest month, day and night']]
    .map(([name, words]) => [name, words, el('input', { type: 'text', id: `sky-${name}`, autocomplete: 'off', maxlength: '20' })]);
  const fields = [...skies, ...means];
  const estimate = () => told(
    () => api.surveyEstimate(Object.fromEntries(fields.map(([name, , field]) => [name, field.value]))),
    'Estimated; the sun may be a quarter off either way. It counts as assumed.');
  said.id = 'climate-said';
  return el('div', {},
    el('div', { class: 'asked' }, el('label', { for: 'climate-file' }, 'A weather file: hours in the EPW form, or twelve lines with sun and air'),
      el('span', { class: 'field' }, file)),
    el('p', {}, 'Or estimated from what you remember, for the latitude told above:'),
    ...fields.map(([name, words, field]) => el('div', { class: 'asked' }, el('label', { for: `sky-${name}` }, words), el('span', { class: 'field' }, field))),
    el('p', {}, el('button', { type: 'button', onclick: estimate }, 'Estimate sun and air')), said, trouble);
}

/** Of a file of hours only the fields that are read, so that it stays short: month, air, sun. */
function thinned(text) {
  const lines = text.split(/\r?\n/);
  if (!lines[0].toUpperCase().startsWith('LOCATION,')) return text;
  return lines.map((line, at) => {
    if (at < 8) return at === 0 ? line : 'HEADER';
    const fields = line.split(',');
    return fields.length > 13 ? `0,${fields[1]},0,0,0,,${fields[6]},,,,,,,${fields[13]}` : line;
  }).join('\n');
}
