// What came of running a snippet: printed text, value, charts, guesses, or what the compiler found.
import { clear, el } from './dom.js';
import { exchangeDrawn, figure, numbers } from './picture.js';
import { unitsNow } from './units.js';

/**
 * Fills `place`. Under a slider charts come first, so that text of changing length does not push them about. With `steady`, charts are exchanged within their frames so that nothing jumps, and good charts stay when the
 * new run brought none.
 */
export function showRun(place, run, { goTo, steady = false, chartsFirst = false }) {
  const frames = [...place.querySelectorAll('figure')];
  const notes = [words(run), problems(run.problems, goTo), printed(run), value(run), guesses(run.predictions)].filter(Boolean);
  if (steady && frames.length && (!run.charts.length || run.charts.length === frames.length)) {
    run.charts.forEach((chart, n) => exchange(frames[n], chart));
    // Guesses are compared once, not at each stop of a slider: they stay.
    const stays = run.predictions.length ? 'figure' : 'figure, .guesses';
    for (const old of [...place.children]) if (!old.matches(stays)) old.remove();
    place.append(...notes);
    return;
  }
  const charts = run.charts.map((chart) => figure(chart));
  const before = chartsFirst ? [] : notes.filter((note) => !note.matches('.guesses'));
  clear(place).append(...before, ...charts, ...notes.filter((note) => !before.includes(note)));
  if (!place.childElementCount) place.append(el('p', { class: 'quiet' }, 'Done. It printed nothing and has no value.'));
}

function exchange(old, chart) {
  exchangeDrawn(old, chart);
  old.querySelector('figcaption').textContent = chart.title;
  const table = old.querySelector('.numbers');
  const fresh = numbers(chart);
  if (table && fresh) table.querySelector('.table-frame').replaceWith(fresh.querySelector('.table-frame'));
}

function words(run) {
  return run.words ? el('p', { class: run.state === 'done' ? 'quiet' : 'trouble' }, run.words) : null;
}

function problems(list, goTo) {
  if (!list.length) return null;
  return el('ul', { class: 'problems' }, ...list.map((problem) => el('li', {},
    el('button', { type: 'button', class: 'link', onclick: () => goTo(problem.line, problem.column) }, `Line ${problem.line}`),
    `: ${problem.words}`,
    problem.compiler && problem.compiler !== problem.words
      ? el('details', {}, el('summary', {}, 'The compiler’s own words'), el('p', { class: 'mono' }, problem.compiler))
      : null)));
}

function printed(run) {
  if (!run.printed) return null;
  const lines = el('pre', { class: 'printed', tabindex: '0', role: 'group', 'aria-label': unitsNow() === 'us' ? 'Printed, in metric units' : 'Printed' },
    ...run.printed.replace(/\n$/, '').split('\n').map((line) => el('span', { class: 'printed-line' }, line || '\n')));
  return unitsNow() === 'us' ? el('div', { class: 'printed-metric' }, el('p', { class: 'quiet java-units' }, 'Java prints in metric (SI) units:'), lines) : lines;
}

function value(run) {
  if (!run.value) return null;
  return el('p', { class: 'value' }, el('span', { class: 'value-word' }, 'Value '), el('code', {}, run.value),
    run.type ? el('span', { class: 'value-type' }, ` ${run.type}`) : null);
}

function guesses(list) {
  if (!list.length) return null;
  return el('div', { class: 'guesses' }, el('p', { class: 'guess-word' }, 'Your guess'),
    el('ul', {}, ...list.map((guess) => el('li', {}, guess))));
}
