// Search over lessons, words and questions. It needs no network: Loftcoil looks through the course it holds.
import * as api from './api.js';
import { arrive, clear, el, say } from './dom.js';
import { addressOf } from './address.js';

const AFTER_MS = 150;
const KINDS = { lesson: 'Lesson', word: 'Word', question: 'Question', caution: 'Caution', java: 'Java' };

export function showSearch(main, sought) {
  const list = el('ol', { class: 'found-list' });
  const count = el('p', { class: 'quiet' });
  const field = el('input', { type: 'search', id: 'search-for', autocomplete: 'off', maxlength: '100', oninput: () => later() });
  field.value = sought;
  let timer = 0;
  let asked = 0;
  const later = () => {
    window.clearTimeout(timer);
    timer = window.setTimeout(look, AFTER_MS);
  };
  const look = async () => {
    asked += 1;
    const mine = asked;
    const words = field.value.trim();
    window.history.replaceState(null, '', addressOf('search', words));
    const found = words ? await api.search(words) : [];
    if (mine !== asked) return;
    clear(list).append(...found.map(entry));
    count.textContent = !words ? '' : found.length ? `${found.length} found` : 'Nothing in the course has all of these words.';
    if (words) say(count.textContent);
  };
  clear(main).append(el('article', {},
    el('h1', {}, 'Search'),
    el('p', { class: 'words-find' }, el('label', { for: 'search-for' }, 'In lessons, words and questions'), field),
    count, list));
  arrive(main);
  field.focus({ preventScroll: true });
  return look();
}

function entry(found) {
  const address = found.kind === 'word' ? addressOf('words', found.step) : addressOf(found.lesson, found.step);
  return el('li', {}, el('a', { href: address }, found.head), el('span', { class: 'quiet' }, ` ${KINDS[found.kind] || ''}${found.where ? `, ${found.where}` : ''}`),
    el('p', {}, found.excerpt));
}
