// What is told line by line: the pieces of a run of pipe, the taps, and what people do with hot water.
import * as api from './api.js';
import { el } from './dom.js';

const PIECE = [
  { name: 'name', words: 'Name', kind: 'long' },
  { name: 'way', words: 'Leads', options: ['up', 'down', 'along'] },
  { name: 'length', words: 'Length' },
  { name: 'slope', words: 'Higher for each m' },
  { name: 'heading', words: 'Compass' },
  { name: 'elbows90', words: '90°', kind: 'short' },
  { name: 'elbows45', words: '45°', kind: 'short' },
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
  { name: 'elbows90', words: '90°', kind: 'short' },
  { name: 'mixer', words: 'Mixing valve' },
];

/** A table of pieces, and below it whether they end where they have to. */
export function runTable(view, run) {
  const closing = el('div', { role: 'status' });
  const trouble = el('div', { role: 'alert' });
  const showClosing = (now) => {
    closing.replaceChildren(el('p', {}, now.words),
      ...(now.mends.length ? [el('p', {}, 'What may be wrong:'), el('ul', { class: 'mends' }, ...now.mends.map((mend) => el('li', {}, mend)))] : []));
  };
  const table = lines(`run-${run.code}`, PIECE, run.pieces, 'Another piece', (rows) => {
    const pieces = rows.filter((row) => row.length.trim());
    trouble.replaceChildren();
    return view.ask(() => api.surveyWalk(run.code, pieces), (told) => refused(trouble, told));
  });
  view.rows.set(`run-${run.code}`, { update: showClosing });
  showClosing(run);
  return el('div', {}, el('p', { class: 'quiet' }, 'Where it runs: room, loft, flue, outdoors, or a temperature. Blank: as the piece before.'),
    table, closing, trouble);
}

/** A table of taps; who changes a name has the draws told anew. */
export function tapsTable(view, taps, changed) {
  const trouble = el('div', { role: 'alert' });
  const table = lines('taps', TAP, taps, 'Another tap', async (rows) => {
    trouble.replaceChildren();
    const told = rows.filter((row) => row.name.trim());
    if (!told.every((row) => row.level.trim() && row.length.trim() && row.tube.trim())) return false;
    return view.ask(() => api.surveyTaps(told), (lines) => refused(trouble, lines));
  });
  return el('div', {}, table, trouble, el('p', {}, el('button', { type: 'button', onclick: changed }, 'Take these taps to the other questions')));
}

function refused(place, told) {
  place.replaceChildren(el('p', { class: 'trouble' }, 'Not taken:'), el('ul', {}, ...told.map((line) => el('li', {}, line))));
}

/** Rows of fields that are kept whole after each change. */
function lines(name, columns, rows, more, keep) {
  const body = el('tbody', {});
  const keepAll = () => keep([...body.children].map((row) => row.read()));
  const add = (row) => body.append(line(name, columns, row, body, keepAll));
  rows.forEach(add);
  if (!rows.length) add({});
  const table = el('table', { class: 'walked' },
    el('thead', {}, el('tr', {}, ...columns.map((column) => el('th', { scope: 'col' }, column.words)), el('th', { scope: 'col' }, 'Take out'))), body);
  return el('div', {}, el('div', { class: 'walked-frame', tabindex: '0', role: 'region', 'aria-label': more }, table),
    el('p', {}, el('button', {
      type: 'button',
      onclick: () => { add({}); body.lastElementChild.querySelector('input, select').focus(); },
    }, more)));
}

function line(name, columns, row, body, keepAll) {
  const fields = columns.map((column) => {
    const label = `${column.words}, line ${body.children.length + 1}`;
    const field = column.options
      ? el('select', { 'aria-label': label, name: column.name }, ...column.options.map((option) => el('option', { value: option }, option)))
      : el('input', { type: 'text', 'aria-label': label, name: column.name, autocomplete: 'off', maxlength: '80' });
    field.value = row[column.name] ?? (column.options ? column.options[0] : '');
    field.addEventListener('change', keepAll);
    return [column, field];
  });
  const made = el('tr', {}, ...fields.map(([column, field]) => el('td', { class: column.kind ?? '' }, field)),
    el('td', {}, el('button', { type: 'button', 'aria-label': 'Take out this line', onclick: () => { made.remove(); keepAll(); } }, '×')));
  made.read = () => Object.fromEntries(fields.map(([column, field]) => [column.name, field.value]));
  return made;
}

const HABITS = [
  ['people', 'How many people live there', '2'],
  ['washesAWeek', 'Low showers or washes in a tub, each person, a week', '7'],
  ['bathsAWeek', 'Full baths, each person, a week', '0'],
  ['dishesADay', 'Times a day that dishes are washed by hand', '2'],
  ['loadsAWeek', 'Machine loads a week that take hot water from the tank', '0'],
];
const AT = [['sink', 'Tap for hands and dishes', 0], ['tub', 'Tap for washes and baths', 1], ['machine', 'Tap for the machine', 2]];

/** Habits as people say them; they become the draws of a mean day. */
export function habitsForm(view) {
  const taps = view.house.stations.flatMap((station) => station.taps).map((tap) => tap.name);
  if (!taps.length) return el('p', {}, 'Tell the taps first, then what is drawn at them.');
  const said = el('p', { role: 'status' });
  const trouble = el('div', { role: 'alert' });
  const fields = [
    ...HABITS.map(([name, words, usual]) => [name, words, el('input', { type: 'text', id: `habit-${name}`, autocomplete: 'off', maxlength: '20', value: usual })]),
    ...AT.map(([name, words, at]) => [name, words, tapChooser(`habit-${name}`, taps, at)]),
  ];
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

function tapChooser(name, taps, at) {
  const field = el('select', { id: name }, ...taps.map((tap) => el('option', { value: tap }, tap)));
  field.value = taps[Math.min(at, taps.length - 1)];
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
    const text = thinned(await chosen.text());
    if (text.length > MOST_BYTES) return refused(trouble, [`${chosen.name}: too long for a weather file`]);
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
