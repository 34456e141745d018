// The learner's own build sheet: choose paper, look at it, keep it as a file. It stands in a frame, with its own style.
import { arrive, clear, el, say } from './dom.js';
import { failure } from './api.js';
import { unitsNow } from './units.js';

const CHOSEN = 'loftcoil sheet';
const PAPERS = [['a4', 'A4'], ['letter', 'US Letter']];

export function showBuildSheet(main) {
  const chosen = remembered();
  const place = el('div', { class: 'sheet-place' });
  const saves = el('p', { class: 'form-foot' });
  const follow = () => {
    clear(saves).append(save('pdf', 'Save as PDF', chosen), save('html', 'Save as HTML', chosen),
      save('csv', 'Save the shopping list', chosen),
      el('button', { type: 'button', onclick: printSheet }, 'Print'));
    return look(place, chosen);
  };
  clear(main).append(el('article', { class: 'build-sheet' },
    el('h1', {}, 'Build sheet'),
    el('p', {}, 'Everything your own design comes to, for the workshop: figures, drawing, parts, cuts, weights, filling, ',
      'the first hour, upkeep, and a log. After each decision it is worked out anew.'),
    el('div', { class: 'sheet-choice' },
      choice('sheet-paper', 'Paper', PAPERS, chosen.paper, (value) => { chosen.paper = value; remember(chosen); follow(); })),
    saves,
    place));
  arrive(main);
  return follow();
}

function choice(name, label, options, value, chose) {
  const field = el('select', { id: name, onchange: () => chose(field.value) },
    ...options.map(([key, words]) => el('option', { value: key, selected: key === value }, words)));
  return el('p', {}, el('label', { for: name }, label), field);
}

function save(form, words, chosen) {
  return el('a', { class: 'button', href: address(form, chosen), download: true }, words);
}

function address(form, { paper }) {
  return `/sheet/${form}/${paper}`;
}

/** Asks for the sheet first, so that a refusal is told in words; the frame then shows it. */
async function look(place, chosen) {
  const wanted = address('show', chosen);
  place.dataset.wanted = wanted;
  if (!place.firstChild) place.append(el('p', { class: 'quiet' }, 'Working out your build sheet. The year takes some seconds.'));
  place.setAttribute('aria-busy', 'true');
  try {
    await ready(wanted);
    if (place.dataset.wanted !== wanted) return;
    const frame = el('iframe', { src: wanted, title: 'Your build sheet', sandbox: 'allow-same-origin allow-modals' });
    frame.addEventListener('load', () => fit(frame));
    clear(place).append(frame);
    say('The build sheet is ready.');
  } catch (trouble) {
    if (trouble.status === 0 || trouble.status === 401) throw trouble;
    clear(place).append(el('p', { class: 'trouble' }, `There is no build sheet of this design: ${trouble.message}`));
    say(trouble.message);
  } finally {
    if (place.dataset.wanted === wanted) place.removeAttribute('aria-busy');
  }
}

async function ready(wanted) {
  let answer;
  try {
    answer = await fetch(wanted, { credentials: 'same-origin' });
  } catch (cause) {
    throw failure(0, 'Loftcoil does not answer.', cause);
  }
  if (answer.ok) return answer.text();
  const refusal = await answer.json().catch(() => ({}));
  throw failure(answer.status, refusal.words || `Refused (${answer.status}).`);
}

/** As tall as the sheet is, so that there is one thing to scroll. */
function fit(frame) {
  const set = () => {
    const inside = frame.contentDocument;
    if (inside && inside.documentElement) frame.style.setProperty('height', `${inside.documentElement.scrollHeight + 2}px`);
  };
  set();
  new ResizeObserver(set).observe(frame);
}

/** As chosen before; else the paper that goes with the reader's units. */
function remembered() {
  const usual = unitsNow() === 'us' ? 'letter' : 'a4';
  try {
    const [paper] = (window.localStorage.getItem(CHOSEN) || '').split(' ');
    return { paper: known(PAPERS, paper || usual) };
  } catch {
    return { paper: usual };
  }
}

function known(options, value) {
  return options.some(([key]) => key === value) ? value : options[0][0];
}

function remember({ paper }) {
  try {
    window.localStorage.setItem(CHOSEN, paper);
  } catch { /* It then lasts only as long as the page. */ }
}

/** Prints the sheet, which stands in a frame: the page around it would be cut over many leaves. */
function printSheet() {
  const frame = document.querySelector('.sheet-place iframe');
  if (frame) frame.contentWindow.print();
  else say('The build sheet is not ready yet.');
}

document.addEventListener('keydown', (event) => {
  if (event.key !== 'p' || !(event.ctrlKey || event.metaKey) || !document.querySelector('.sheet-place iframe')) return;
  event.preventDefault();
  printSheet();
});
