// The glossary: every term of the lessons, to read or to search, with the lesson it first stands in.
import { arrive, clear, el, prose } from './dom.js';
import { addressOf } from './address.js';

export function showWords(main, words) {
  const entries = words.terms.map(entry);
  const count = el('p', { class: 'quiet', role: 'status' });
  const field = el('input', { type: 'search', id: 'words-find', autocomplete: 'off', oninput: () => sift() });
  const sift = () => {
    const part = field.value.trim().toLowerCase();
    for (const each of entries) each.box.hidden = !each.text.includes(part);
    const left = entries.filter((each) => !each.box.hidden).length;
    count.textContent = left === 0 ? 'No term has that in it.' : left === entries.length ? `${left} terms` : `${left} of ${entries.length} terms`;
  };
  clear(main).append(el('article', {},
    el('h1', {}, 'Words'),
    el('p', {}, words.terms.length ? 'Terms of the lessons, each in one sense.' : 'This course has no glossary.'),
    words.terms.length ? el('p', { class: 'words-find' }, el('label', { for: 'words-find' }, 'Find a term'), field) : null,
    words.terms.length ? count : null,
    el('dl', { class: 'words' }, ...entries.map((each) => each.box))));
  sift();
  return { goTo: (slug) => goTo(main, slug) };
}

function entry(term) {
  const where = term.lesson && el('p', { class: 'quiet' }, 'First in ', el('a', { href: addressOf(term.lesson) }, term.lessonTitle));
  const box = el('div', { id: `word-${slugOf(term.name)}`, tabindex: '-1' },
    el('dt', {}, term.name), el('dd', {}, prose(term.html), where));
  return { box, text: box.textContent.toLowerCase() };
}

function slugOf(name) {
  return name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
}

function goTo(main, slug) {
  const place = slug && document.getElementById(`word-${slug}`);
  if (!place) return arrive(main);
  place.scrollIntoView({ block: 'center' });
  place.focus({ preventScroll: true });
}
