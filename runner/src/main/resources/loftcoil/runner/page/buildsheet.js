// The learner's own build sheet: choose paper, look at it, keep it as a file. It stands in a frame, with its own style.
import { arrive, clear, el, say } from './dom.js';
import * as api from './api.js';
import { unitsNow } from './units.js';
import { workBox } from './work.js';

const FAR_MS = 300;
const CHOSEN = 'loftcoil sheet';
const PAPERS = [['a4', 'A4'], ['letter', 'US Letter']];

export function showBuildSheet(main) {
  const view = {
    chosen: remembered(), asked: 0,
    work: el('div', {}),
    place: el('div', { class: 'sheet-place' }),
    saves: el('p', { class: 'form-foot' }),
  };
  const follow = () => {
    clear(view.saves).append(save(view, 'pdf', 'Save as PDF'), save(view, 'html', 'Save as HTML'),
      save(view, 'csv', 'Save the shopping list'),
      el('button', { type: 'button', onclick: () => printSheet(view.place) }, 'Print the sheet'));
    return look(view);
  };
  clear(main).append(el('article', { class: 'build-sheet' },
    el('h1', {}, 'Build sheet'),
    el('p', {}, 'Everything your own design comes to, for the workshop: figures, drawing, parts, cuts, weights, filling, ',
      'the first hour, upkeep, and a log. After each decision it is worked out anew.'),
    el('div', { class: 'sheet-choice' },
      choice('sheet-paper', 'Paper', PAPERS, view.chosen.paper, (value) => {
        view.chosen.paper = value;
        remember(view.chosen);
        follow();
      })),
    view.saves, view.work, view.place));
  arrive(main);
  return follow();
}

function choice(name, label, options, value, chose) {
  const field = el('select', { id: name, onchange: () => chose(field.value) },
    ...options.map(([key, words]) => el('option', { value: key, selected: key === value }, words)));
  return el('p', {}, el('label', { for: name }, label), field);
}

/** A link that also works by itself; clicked, it says that the file is being made, and can be stopped. */
function save(view, form, words) {
  const link = el('a', { class: 'button', href: address(form, view.chosen), download: true }, words);
  link.addEventListener('click', (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    keep(view, link, form);
  });
  return link;
}

async function keep(view, link, form) {
  if (link.getAttribute('aria-disabled')) return;
  link.setAttribute('aria-disabled', 'true');
  try {
    if (!await whole(view)) return;
    const ended = new AbortController();
    const box = workBox(form === 'pdf' ? 'Laying out the pages of the PDF.' : 'Writing the file.', () => ended.abort());
    view.work.replaceChildren(box.box);
    say('The file is being made. It can be stopped.');
    try {
      const answer = await asked(link.href, { signal: ended.signal });
      const file = URL.createObjectURL(await answer.blob());
      el('a', { href: file, download: named(answer, form) }).click();
      window.setTimeout(() => URL.revokeObjectURL(file), 60000);
      say('The file is saved where your browser keeps files.');
    } catch (trouble) {
      if (!ended.signal.aborted) throw trouble;
      say('Stopped; no file was saved.');
    } finally {
      box.done();
    }
  } catch (trouble) {
    view.work.replaceChildren(el('p', { class: 'trouble' }, `Not saved: ${trouble.message}`));
  } finally {
    link.removeAttribute('aria-disabled');
  }
}

function named(answer, form) {
  const name = /filename="([^"]+)"/.exec(answer.headers.get('content-disposition') || '');
  return name ? name[1] : `build-sheet.${form}`;
}

function address(form, { paper }) {
  return `/sheet/${form}/${paper}`;
}

/** What there is at once first, then the whole in its place; a refusal is told in words. */
async function look(view) {
  view.asked += 1;
  const mine = view.asked;
  view.place.setAttribute('aria-busy', 'true');
  try {
    const begun = await api.build();
    if (begun.state !== 'done') await frame(view, mine, 'half', 'Half of your build sheet: starts and year are not judged yet');
    if (!await whole(view, begun) || mine !== view.asked) return;
    await frame(view, mine, 'show', 'Your build sheet');
    say('The build sheet is ready.');
  } catch (trouble) {
    if (trouble.status === 0 || trouble.status === 401) throw trouble;
    if (mine !== view.asked) return;
    clear(view.place).append(el('p', { class: 'trouble' }, `There is no build sheet of this design: ${trouble.message}`));
    say(trouble.message);
  } finally {
    if (mine === view.asked) view.place.removeAttribute('aria-busy');
  }
}

/** Waits for year and starts, with how far they are and a stop; false where they were stopped or cannot be. */
async function whole(view, begun) {
  let far = begun || await api.build();
  if (far.state === 'done') return true;
  const box = workBox(far.words, () => { api.buildStop().catch(() => {}); }, { id: 'sheet-stop' });
  view.work.replaceChildren(box.box);
  say('Year and starts are being worked out; half of the sheet is there already. It can be stopped.');
  try {
    while (far.state === 'working' && view.place.isConnected) {
      box.far(far.percent, far.words);
      await new Promise((later) => { window.setTimeout(later, FAR_MS); });
      far = await api.buildFar();
    }
  } finally {
    box.done();
  }
  if (far.state === 'done') return true;
  if (view.place.isConnected) ended(view, far);
  return false;
}

/** What was ended before its end, and how to go on. */
function ended(view, far) {
  const again = el('button', { type: 'button', onclick: () => { clear(view.work); look(view); } }, 'Work it out');
  const words = far.state === 'refused' ? far.words : 'Stopped. What stands below is half of the sheet: starts and year are not judged.';
  view.work.replaceChildren(el('p', { class: far.state === 'refused' ? 'trouble' : 'quiet', role: 'status' }, words), el('p', {}, again));
  if (far.state === 'stopped') again.focus();
  say(words);
}

/** Asks for the sheet first, so that a refusal is told in words; what stands there stays until the new one has come. */
async function frame(view, mine, form, title) {
  const wanted = address(form, view.chosen);
  await asked(wanted);
  if (mine !== view.asked || !view.place.isConnected) return;
  const coming = el('iframe', { src: wanted, title, class: 'coming', sandbox: 'allow-same-origin allow-modals' });
  const there = new Promise((shown) => { coming.addEventListener('load', shown, { once: true }); });
  view.place.append(coming);
  await there;
  coming.classList.remove('coming');
  fit(coming);
  for (const old of [...view.place.children]) if (old !== coming) old.remove();
}

async function asked(wanted, more = {}) {
  let answer;
  try {
    answer = await fetch(wanted, { credentials: 'same-origin', ...more });
  } catch (cause) {
    throw api.failure(0, 'Loftcoil does not answer.', cause);
  }
  if (answer.ok) return answer;
  const refusal = await answer.json().catch(() => ({}));
  throw api.failure(answer.status, refusal.words || `Refused (${answer.status}).`);
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
function printSheet(place) {
  const frame = place.querySelector('iframe');
  if (!frame) return say('There is no sheet to print yet.');
  frame.contentWindow.focus();
  return frame.contentWindow.print();
}

document.addEventListener('keydown', (event) => {
  const place = document.querySelector('.sheet-place');
  if (event.key !== 'p' || !(event.ctrlKey || event.metaKey) || !place || !place.querySelector('iframe')) return;
  event.preventDefault();
  printSheet(place);
});
