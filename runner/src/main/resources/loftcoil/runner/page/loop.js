// The panel with the learner's own design. Starts and year are judged a second later. Others may ask to be told of either.
import * as api from './api.js';
import { offerClears } from './clears.js';
import { clear, el, id, say } from './dom.js';
import { effectLines, judgeEffect } from './effect.js';
import { drawn, figure } from './picture.js';
import { safetyBox } from './safety.js';

const AGAIN_MS = 2000;
const watchers = new Map();
const judged = new Map();
let asked = 0;
let tries = 0;
/** The verdict as it was told last, and whether it is the whole one. */
let last = null;
let name = '';

/** Calls `told` with the design whenever it changes, as long as `place` is in the page. */
export function watchLoop(place, told) {
  watchers.set(place, told);
}

/**
 * Calls `told` with each verdict on the design, and whether it is the whole one, as long as `place` is in the page: what stands there must
 * not be that of an older design.
 * @param fresh the design has just been changed: what was told last is of the one before
 */
export function watchVerdict(place, told, fresh) {
  judged.set(place, told);
  if (last && !fresh) told(last.safety, last.whole);
}

/** @param note what has just been done to the design, to stand above its verdict */
export async function refreshLoop(note = null) {
  asked += 1;
  const mine = asked;
  try {
    const design = await api.design();
    if (mine !== asked) return;
    const place = show(design, note);
    tell(design.safety, !design.safety.open);
    if (design.safety.open) judge(mine, place, design.safety);
    else offerClears(place.firstChild, follow);
  } catch (trouble) {
    if (!id('loop').firstChild) {
      id('loop').append(el('p', { class: 'quiet' }, `Your loop cannot be shown: ${trouble.message}`));
    }
  }
}

/** Asks for the whole verdict; one of a design that has changed meanwhile is let fall. */
async function judge(mine, place, quick) {
  let safety;
  try {
    safety = await api.safety();
  } catch (trouble) {
    if (mine !== asked) return;
    if (trouble.status === 503) return window.setTimeout(() => mine === asked && judge(mine, place, quick), AGAIN_MS);
    safety = { ...quick, open: `Starts and year could not be judged: ${trouble.message}` };
  }
  if (mine !== asked) return;
  const box = safetyBox(safety);
  place.replaceChildren(box);
  offerClears(box, follow);
  tell(safety, true);
  say(safety.open || `Starts and year are judged too: ${safety.label}.`);
}

/** Takes what clears a danger into the design; what it comes to stands above the verdict until the design changes again. */
async function follow(code, way) {
  const taken = await api.followWay(code, way);
  const effect = el('div', {}, ...effectLines(taken.effect));
  const note = el('div', { class: 'followed', tabindex: '-1' }, el('p', { class: 'said-words' }, taken.words),
    el('p', {}, el('button', { type: 'button', onclick: undo }, 'Undo')), effect);
  await refreshLoop(note);
  note.focus();
  judgeEffect(effect, taken.effect);
}

async function undo() {
  const shelf = await api.designsDo('undo');
  const note = el('p', { class: 'followed', tabindex: '-1' }, shelf.words);
  await refreshLoop(note);
  note.focus();
}

function tell(safety, whole) {
  last = { safety, whole };
  brief(safety);
  for (const [place, told] of judged) {
    if (place.isConnected) told(safety, whole);
    else judged.delete(place);
  }
}

/** Beside the title, which is all that is seen of a panel that is folded. */
function brief(safety) {
  id('loop-brief').replaceChildren(`${name}: `, el('strong', {}, safety.label));
}

function show(design, note) {
  const safety = el('div', {}, safetyBox(design.safety));
  name = design.name;
  clear(id('loop')).append(...[
    note, safety,
    design.circulates ? el('p', { class: 'circulates' }, design.circulates) : null,
    el('p', {}, el('a', { href: '#/emergency' }, 'It hammers, steams, drips or smokes?')),
    small(design), stillness(),
    el('dl', {}, ...design.figures.flatMap((each) => [el('dt', {}, each.label), el('dd', {}, each.value)]))].filter(Boolean));
  for (const [place, show] of watchers) {
    if (place.isConnected) show(design);
    else watchers.delete(place);
  }
  return safety;
}

/** The drawing beside the text; it opens large. */
function small(design) {
  return el('button', { type: 'button', class: 'enlarge', 'aria-label': `Show large: ${design.picture.title}`, onclick: () => large(design) }, drawn(design.picture),
    el('span', {}, 'Show large'));
}

const STILL = 'loftcoil water still';

/** What moves by itself can be held still: WCAG 2.2, 2.2.2. Who has asked the system for no motion sees it stand anyway. */
function stillness() {
  if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) return null;
  const root = document.documentElement;
  root.classList.toggle('still', isStill());
  const words = () => (root.classList.contains('still') ? 'Let the water move' : 'Hold the water still');
  const button = el('button', { type: 'button', class: 'plain' }, words());
  button.addEventListener('click', () => {
    const still = root.classList.toggle('still');
    button.textContent = words();
    try { window.localStorage.setItem(STILL, still ? 'yes' : 'no'); } catch { /* It then lasts only as long as the page. */ }
  });
  return button;
}

function isStill() {
  try {
    return window.localStorage.getItem(STILL) === 'yes';
  } catch {
    return document.documentElement.classList.contains('still');
  }
}

/** Shows what is being dragged as a ghost over the decided house, in the panel and in every drawing of a lesson. */
export async function showTried(lesson, step, value) {
  tries += 1;
  const mine = tries;
  const { picture } = await api.tried(lesson, step, value);
  if (!picture || mine !== tries) return;
  for (const svg of document.querySelectorAll('svg.lc-house')) {
    if (svg.closest('.loop .enlarge, .step-drawing')) svg.replaceWith(drawn(picture));
  }
}

function large(design) {
  const close = el('button', { type: 'button', class: 'main', autofocus: true }, 'Close');
  const dialog = el('dialog', { class: 'large', 'aria-labelledby': 'large-title' },
    el('h2', { id: 'large-title' }, design.name), figure(design.picture), figure(design.plan), el('p', {}, close));
  close.addEventListener('click', () => dialog.close());
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}
