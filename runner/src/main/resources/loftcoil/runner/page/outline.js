// The way through the open lesson: its headings, and under each the questions not yet answered.
import { clear, el, id, say } from './dom.js';
import { addressOf } from './address.js';

const DONE = ['right', 'decided'];

/** Lists the lesson that stands in `main`. */
export function showOutline(main, lesson) {
  const items = [];
  for (const each of main.querySelectorAll('.prose h2, .prose h3, section.question')) {
    const item = each.matches('section') ? question(each, lesson) : heading(each, lesson);
    if (item) items.push(item);
  }
  clear(id('outline')).append(...items);
  id('outline-fold').hidden = !items.length;
}

export function clearOutline() {
  clear(id('outline'));
  id('outline-fold').hidden = true;
}

/** A heading that stands inside a step of prose gets a name of its own. */
function heading(each, lesson) {
  if (each.dataset.own) return null;
  const name = `h-${each.textContent.toLowerCase().normalize('NFD').replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')}`;
  each.id = `step-${name}`;
  each.tabIndex = -1;
  return el('li', { class: each.localName }, el('a', { href: addressOf(lesson.id, name) }, each.textContent));
}

function question(each, lesson) {
  if (!isOpen(each)) return null;
  return el('li', { class: 'unanswered' },
    el('a', { href: addressOf(lesson.id, each.id.replace(/^step-/, '')) }, el('span', { class: 'unseen' }, 'Not answered: '),
      each.querySelector('.question-label').textContent));
}

/** A guess is no question that must be answered. */
function isOpen(each) {
  return each.dataset.asked !== 'predict' && !DONE.includes(each.dataset.state);
}

/** Goes to the first unanswered question below where the learner reads, or else to the first of all. */
export function goToUnanswered() {
  const open = [...document.querySelectorAll('section.question')].filter(isOpen);
  const next = open.find((each) => each.getBoundingClientRect().top > 1 && !each.contains(document.activeElement)) || open[0];
  if (!next) return say('Every question of this lesson is answered.');
  next.scrollIntoView({ block: 'start' });
  next.focus({ preventScroll: true });
}
