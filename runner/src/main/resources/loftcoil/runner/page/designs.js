// Designs: the one that is taken up with its history, those on the shelf, and those that were removed.
import * as api from './api.js';
import { clear, el, say } from './dom.js';
import { showBanner } from './banner.js';

const MOST_BYTES = 1_000_000;
const FIRST_MOMENTS = 20;

export async function showDesigns(main, changed) {
  const view = {
    main, changed, all: false,
    said: el('p', { role: 'status', class: 'said-words' }),
    trouble: el('div', { role: 'alert' }),
    place: el('div', {}),
  };
  clear(main).append(el('article', { class: 'designs' },
    el('h1', {}, 'Designs'),
    el('p', {}, 'One design is taken up: lessons, house and rebuild work on it. The others lie on the shelf. Nothing here is lost: what '
      + 'you replace goes to the shelf, what you remove can be brought back, and every change can be undone.'),
    view.said, view.trouble, view.place));
  draw(view, await api.designs());
}

function draw(view, shelf) {
  view.shelf = shelf;
  view.place.replaceChildren(...[
    el('h2', {}, 'Taken up'), own(view, shelf.own),
    history(view, shelf.history),
    el('h2', {}, 'On the shelf'),
    shelf.others.length ? null : el('p', { class: 'quiet' }, 'Nothing yet. A copy, or the one from before when you begin another, lies here.'),
    ...shelf.others.map((card) => other(view, card)),
    begin(view, shelf.dwellings),
    shelf.removed.length ? removed(view, shelf.removed) : null].filter(Boolean));
}

/** Does it, draws what came of it, and puts the focus where it was or on what was said. */
async function act(view, work) {
  const focus = document.activeElement && document.activeElement.id;
  view.trouble.replaceChildren();
  try {
    const shelf = await work();
    draw(view, shelf);
    view.said.textContent = shelf.words;
    const again = focus && document.getElementById(focus);
    if (again && !again.disabled) again.focus();
    await view.changed();
  } catch (trouble) {
    if (api.isGone(trouble)) return showBanner(() => {});
    view.said.textContent = '';
    view.trouble.replaceChildren(el('p', { class: 'trouble' }, 'Not done:'),
      el('ul', {}, ...trouble.message.split('\n').map((line) => el('li', {}, line))));
  }
}

function button(words, id, does, more = {}) {
  return el('button', { type: 'button', id, onclick: does, ...more }, words);
}

function own(view, card) {
  return el('section', { class: 'card own', 'aria-label': `Taken up: ${card.name}` },
    el('h3', {}, card.name), el('p', { class: 'quiet' }, card.words, ' · ', el('span', { class: 'path' }, card.file)),
    el('p', { class: 'form-foot' }, button('Save as a file', 'own-save', () => save(view, card))),
    naming(view, card));
}

function other(view, card) {
  const id = `card-${card.key}`;
  const found = el('div', { role: 'status' });
  return el('section', { class: 'card', 'aria-label': card.name },
    el('h3', {}, card.name), el('p', { class: 'quiet' }, card.words, card.words ? ' · ' : '', el('span', { class: 'path' }, card.file)),
    card.trouble ? el('p', { class: 'trouble' }, `It cannot be taken up: ${card.trouble}`) : null,
    el('p', { class: 'form-foot' },
      card.trouble ? null : button('Take it up', `${id}-up`, () => act(view, () => api.designsDo('take-up', { key: card.key }))),
      card.trouble ? null : button('What differs', `${id}-differs`, () => differs(view, card, found), { 'aria-label': `What differs from the one taken up: ${card.name}` }),
      card.trouble ? null : button('Save as a file', `${id}-save`, () => save(view, card)),
      button('Remove', `${id}-away`, () => act(view, () => api.designsDo('remove', { key: card.key })))),
    found, card.trouble ? null : naming(view, card));
}

/** All in which it differs from the design that is taken up, that one's value first. */
async function differs(view, card, place) {
  try {
    const list = await api.designsDo('differences', { key: card.key });
    place.replaceChildren(list.length
      ? el('div', {}, el('p', {}, `In the one taken up → in “${card.name}”:`), el('ul', {}, ...list.map((each) => el('li', {}, difference(each)))))
      : el('p', {}, 'They are the same.'));
  } catch (trouble) {
    if (api.isGone(trouble)) return showBanner(() => {});
    place.replaceChildren(el('p', { class: 'trouble' }, trouble.message));
  }
}

function difference({ part, label, before, after }) {
  return `${part}${label && label !== part ? `: ${label}` : ''}, ${before} → ${after}`;
}

/** One field for a name serves both: another name for this one, or the name of a copy. */
function naming(view, card) {
  const id = `name-${card.key || 'own'}`;
  const field = el('input', { type: 'text', id, maxlength: '100', autocomplete: 'off' });
  const wanted = (work) => act(view, () => work(field.value.trim()));
  return el('details', { class: 'naming' }, el('summary', {}, 'Another name, or a copy'),
    el('p', {}, el('label', { for: id }, 'Name'), ' ', field),
    el('p', { class: 'form-foot' },
      button('Call it that', `${id}-call`, () => wanted((name) => api.designsDo('rename', { key: card.key, name }))),
      button('Copy it under that name', `${id}-copy`, () => wanted((name) => api.designsDo('copy', { key: card.key, name })))));
}

async function save(view, card) {
  try {
    const file = await api.designsDo('saved', { key: card.key });
    const address = URL.createObjectURL(new Blob([file.json], { type: 'application/json' }));
    const link = el('a', { href: address, download: file.name });
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(address), 10_000);
    view.said.textContent = `Saved as ${file.name}, where your browser keeps what it saves.`;
  } catch (trouble) {
    if (api.isGone(trouble)) return showBanner(() => {});
    view.trouble.replaceChildren(el('p', { class: 'trouble' }, `Not saved: ${trouble.message}`));
  }
}

function begin(view, dwellings) {
  const from = el('select', { id: 'begin-from' }, ...dwellings.map((each) => el('option', { value: each.code }, each.label)));
  const name = el('input', { type: 'text', id: 'begin-name', maxlength: '100', autocomplete: 'off' });
  const file = el('input', { type: 'file', id: 'begin-file', accept: '.json,application/json' });
  file.addEventListener('change', () => open(view, file));
  return el('section', { class: 'card', 'aria-label': 'Begin another' },
    el('h3', {}, 'Begin another'),
    el('p', {}, el('label', { for: 'begin-from' }, 'From an example dwelling'), ' ', from),
    el('p', {}, el('label', { for: 'begin-name' }, 'Name; may stay empty'), ' ', name),
    el('p', { class: 'form-foot' }, button('Begin it', 'begin-go', () => act(view, () => api.designsDo('start', { dwelling: from.value, name: name.value.trim() })))),
    el('p', {}, el('label', { for: 'begin-file' }, 'Or open a design file, JSON'), ' ', file));
}

async function open(view, input) {
  const [file] = input.files;
  if (!file) return;
  await act(view, async () => {
    if (file.size > MOST_BYTES) throw new Error(`${file.name}: ${file.size} bytes, too long for a design`);
    return api.designsDo('open', { text: await file.text(), from: file.name });
  });
}

function removed(view, cards) {
  return el('details', { class: 'card' }, el('summary', {}, `Removed (${cards.length})`),
    ...cards.map((card) => el('p', { class: 'form-foot' }, el('span', {}, card.name, ' ', el('span', { class: 'path' }, card.file)),
      button('Bring it back', `back-${card.key}`, () => act(view, () => api.designsDo('bring-back', { key: card.key }))))));
}

function history(view, past) {
  const shown = view.all ? past.moments : past.moments.slice(0, FIRST_MOMENTS);
  const hidden = past.moments.length - shown.length;
  return el('section', { class: 'history', 'aria-label': 'History' },
    el('h3', {}, 'History'),
    el('p', { class: 'form-foot' },
      button('Undo', 'history-undo', () => act(view, () => api.designsDo('undo')), { disabled: !past.undo, 'aria-describedby': 'undo-what' }),
      el('span', { id: 'undo-what', class: 'quiet' }, past.undo || 'nothing to undo')),
    el('p', { class: 'form-foot' },
      button('Redo', 'history-redo', () => act(view, () => api.designsDo('redo')), { disabled: !past.redo, 'aria-describedby': 'redo-what' }),
      el('span', { id: 'redo-what', class: 'quiet' }, past.redo || 'nothing to redo')),
    el('ol', { class: 'moments', reversed: true }, ...shown.map((moment) => momentLine(view, moment))),
    hidden ? button(`Show ${hidden} older`, 'history-more', () => { view.all = true; draw(view, view.shelf); say('All shown.'); }) : null,
    past.folded ? el('p', { class: 'quiet' }, past.folded) : null);
}

function momentLine(view, moment) {
  const lines = moment.changes.map((each) => el('li', {}, difference(each)));
  return el('li', {},
    el('p', {}, el('span', { class: 'when' }, moment.at), ' ', moment.how, moment.now ? el('strong', {}, ' · as it is now') : null),
    lines.length > 3
      ? el('details', {}, el('summary', {}, `${lines.length} things changed`), el('ul', {}, ...lines))
      : lines.length ? el('ul', {}, ...lines) : null,
    moment.now ? null : button('Back to then', `moment-${moment.number}`, () => act(view, () => api.designsDo('back-to', { number: moment.number })),
      { 'aria-label': `Back to then: ${moment.at}, ${moment.how}` }));
}
