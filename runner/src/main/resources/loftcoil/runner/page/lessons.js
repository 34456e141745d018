// The list of lessons: each with how long it takes and how far the learner is.
import { clear, el, id } from './dom.js';
import { addressOf } from './address.js';

export function showLessons(course, openId) {
  clear(id('lessons')).append(...course.lessons.map((line) => entry(line, line.id === openId)));
  const where = clear(id('where'));
  where.append('Your work is kept in ', el('span', { class: 'path' }, course.folder));
  showNotices(course.notices);
}

function entry(line, open) {
  const all = line.of > 0 && line.done >= line.of;
  const far = all ? 'all answered' : line.done > 0 ? `${line.done} of ${line.of} answered` : '';
  return el('li', { class: all ? 'full' : line.done > 0 ? 'part' : 'empty' },
    el('a', { href: addressOf(line.id), 'aria-current': open ? 'page' : null },
      el('span', { class: 'lesson-name' }, line.title),
      el('span', { class: 'lesson-far' }, [`${line.minutes} min`, far].filter(Boolean).join(', ')),
      line.recall !== 'open' ? el('span', { class: `lesson-refreshed ${line.recall}-lesson` },
        line.recall === 'faded' ? 'faded: read again' : 'still there') : null));
}

function showNotices(notices) {
  const old = document.querySelector('.notices');
  if (old) old.remove();
  if (!notices.length) return;
  document.querySelector('.top').after(
    el('section', { class: 'notices', 'aria-label': 'Notices' }, ...notices.map((notice) => el('p', {}, notice))));
}
