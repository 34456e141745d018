// One lesson: its steps in order, and where to stand in it.
import { arrive, clear, el, prose, say, sign } from './dom.js';
import { addressOf } from './address.js';
import { figure } from './picture.js';
import { snippetStep } from './snippet.js';
import { questionStep } from './question.js';
import { watchLoop } from './loop.js';

const MAKERS = {
  prose: (step) => prose(step.html),
  caution: cautionStep,
  drawing: drawingStep,
  snippet: snippetStep,
  question: questionStep,
};

export function showLesson(main, lesson, context) {
  const outline = { level: 1 };
  const steps = lesson.steps.map((step) => wrapped(step, lesson, outline, context));
  const first = steps[0] && steps[0].querySelector('h1');
  clear(main).append(el('article', {},
    el('p', { class: 'kicker' }, placeOf(lesson, context.course)),
    first ? null : el('h1', {}, lesson.title),
    ...steps,
    onward(lesson, context.course)));
  for (const made of main.querySelectorAll('.step')) made.dispatchEvent(new CustomEvent('placed'));
  return { goTo: (stepId, how) => goTo(main, stepId, how) };
}

function wrapped(step, lesson, outline, context) {
  const made = MAKERS[step.kind](step, { lesson, outline, ...context });
  for (const heading of made.querySelectorAll('h1, h2, h3, h4')) {
    if (!heading.dataset.own) outline.level = Number(heading.tagName[1]);
  }
  made.classList.add('step', `step-${step.kind}`);
  made.id = `step-${step.id}`;
  made.tabIndex = -1;
  return made;
}

function placeOf(lesson, course) {
  const at = course.lessons.findIndex((line) => line.id === lesson.id) + 1;
  return `Lesson ${at} of ${course.lessons.length}, about ${lesson.minutes} minutes`;
}

function cautionStep(step) {
  const kind = step.danger ? 'danger' : 'caution';
  const word = step.danger ? 'Danger' : 'Caution';
  return el('div', { class: `warning ${kind}`, role: 'note', 'aria-label': word },
    sign(kind), el('div', {}, el('p', { class: 'warning-word' }, word), prose(step.html)));
}

function drawingStep(step) {
  const box = el('div', {}, figure(step.picture, step.caption));
  watchLoop(box, (design) => box.replaceChildren(figure(design.picture, step.caption)));
  return box;
}

function onward(lesson, course) {
  const name = (id) => (course.lessons.find((line) => line.id === id) || { title: id }).title;
  const link = (id, word) => id && el('a', { href: addressOf(id) }, el('span', {}, word), name(id));
  return el('nav', { class: 'onward', 'aria-label': 'Lesson before and after' },
    link(lesson.before, 'Before: '), link(lesson.after, 'Next: ') || el('p', {}, 'This is the last lesson so far.'));
}

function goTo(main, stepId, { focus, marked }) {
  const place = stepId && document.getElementById(`step-${stepId}`);
  if (!place) {
    if (focus) arrive(main);
    else window.scrollTo(0, 0);
    return;
  }
  if (marked) {
    const note = el('p', { class: 'here' }, 'You were here. ',
      el('button', { type: 'button', class: 'link', onclick: () => { note.remove(); toTop(main); } },
        'Go to the start of the lesson'));
    place.before(note);
    note.scrollIntoView({ block: 'start' });
  } else {
    place.scrollIntoView({ block: 'start' });
  }
  place.focus({ preventScroll: true });
  if (marked) say('Opened where you were.');
}

function toTop(main) {
  arrive(main);
}
