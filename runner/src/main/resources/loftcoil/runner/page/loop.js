// The panel with the learner's own design. Others may ask to be told when it changes.
import * as api from './api.js';
import { clear, el, id, sign } from './dom.js';
import { drawn, figure } from './picture.js';

const watchers = new Map();

/** Calls `told` with the design whenever it changes, as long as `place` is in the page. */
export function watchLoop(place, told) {
  watchers.set(place, told);
}

export async function refreshLoop() {
  try {
    show(await api.design());
  } catch (trouble) {
    if (!id('loop').firstChild) {
      id('loop').append(el('p', { class: 'quiet' }, `Your loop cannot be shown: ${trouble.message}`));
    }
  }
}

function show(design) {
  id('loop-brief').textContent = design.name;
  clear(id('loop')).append(...[
    found(design),
    small(design),
    el('dl', {}, ...design.figures.flatMap((each) => [el('dt', {}, each.label), el('dd', {}, each.value)])),
    cautions(design.cautions)].filter(Boolean));
  for (const [place, told] of watchers) {
    if (place.isConnected) told(design);
    else watchers.delete(place);
  }
}

/** Whether the loop circulates; framed as a danger where it does not. */
function found(design) {
  const words = el('p', { class: 'circulates' }, design.circulates);
  return design.danger
    ? el('div', { class: 'warning danger' }, sign('danger'), el('div', {}, el('p', { class: 'warning-word' }, 'Danger'), words))
    : words;
}

/** The drawing beside the text; it opens large. */
function small(design) {
  return el('button', { type: 'button', class: 'enlarge', onclick: () => large(design) }, drawn(design.picture),
    el('span', {}, 'Show large'));
}

function large(design) {
  const close = el('button', { type: 'button', class: 'main', autofocus: true }, 'Close');
  const dialog = el('dialog', { class: 'large', 'aria-labelledby': 'large-title' },
    el('h2', { id: 'large-title' }, design.name), figure(design.picture), el('p', {}, close));
  close.addEventListener('click', () => dialog.close());
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}

function cautions(list) {
  if (!list.length) return null;
  return el('div', { class: 'warning caution' }, sign('caution'),
    el('div', {}, el('p', { class: 'warning-word' }, 'Mind'), el('ul', {}, ...list.map((words) => el('li', {}, words)))));
}
