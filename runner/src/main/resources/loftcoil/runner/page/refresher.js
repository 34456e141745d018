// The refresher: one quick question after the other, what is said to each, and at the end the lessons that have faded.
import * as api from './api.js';
import { clear, el, hold, isHeld, prose, sign } from './dom.js';
import { addressOf } from './address.js';
import { choiceField, typedField } from './field.js';
import { showBanner } from './banner.js';

export async function showRefresher(main, changed) {
  const path = await api.refresher();
  const place = el('div', { class: 'refresher' });
  clear(main).append(el('article', {}, el('h1', {}, 'Refresher'), place));
  const view = { place, changed, main };
  if (!path.questions.length) place.append(el('p', {}, path.words));
  else if (path.questions.every((question) => !question.state)) start(view, path);
  else next(view, path);
}

function start(view, path) {
  view.place.replaceChildren(
    el('p', {}, `For anyone who did this years ago and is about to build again: ${path.questions.length} quick questions, `
      + `about ${path.minutes} minutes. They find which lessons have faded, and at the end you open only those.`),
    el('p', {}, 'Answer what you know without looking it up. To say that you do not remember is as good an answer as any.'),
    el('p', {}, el('button', { type: 'button', class: 'main', onclick: () => next(view, path, true) }, 'Begin')));
}

function next(view, path, moved = false) {
  const at = path.questions.findIndex((question) => !question.state);
  if (at < 0) end(view, path);
  else ask(view, path, at);
  if (moved) focusOn(view.place.querySelector('h2'));
}

function focusOn(heading) {
  heading.tabIndex = -1;
  window.scrollTo(0, 0);
  heading.focus({ preventScroll: true });
}

function ask(view, path, at) {
  const question = path.questions[at];
  const asked = { name: 'refresher-answer', label: 'Your answer' };
  const field = question.options.length ? choiceField(question.options, asked) : typedField(question.unit, asked);
  const said = el('div', { class: 'reply', 'aria-live': 'polite' });
  const sends = el('button', { type: 'submit', class: 'main' }, 'Answer');
  const forgets = el('button', { type: 'button' }, 'I do not remember');
  const form = el('form', { novalidate: true }, field.box, el('div', { class: 'form-foot' }, sends, forgets));
  const busy = (on) => { hold(sends, on); hold(forgets, on); };
  const send = async (asking) => {
    if (isHeld(sends)) return;
    busy(true);
    try {
      const reply = await asking();
      showSaid(said, reply);
      if (reply.state === 'unread') return busy(false);
      form.hidden = true;
      await view.changed();
      said.append(onward(view));
    } catch (trouble) {
      if (api.isGone(trouble)) showBanner(() => {});
      said.replaceChildren(el('p', { class: 'trouble' }, `Not sent: ${trouble.message} Your answer still stands above.`));
      busy(false);
    }
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const text = field.text();
    if (text.trim()) send(() => api.refresherAnswer(question.id, text));
    else { said.replaceChildren(el('p', { class: 'quiet' }, 'Answer first, or say that you do not remember.')); field.focus(); }
  });
  forgets.addEventListener('click', () => send(() => api.refresherForgotten(question.id)));
  view.place.replaceChildren(
    progress(path, at),
    el('section', { class: 'question', 'aria-labelledby': 'refresher-question' },
      el('p', { class: 'question-kind' }, question.lesson),
      el('h2', { class: 'question-label', id: 'refresher-question' }, question.label),
      prose(question.html), form, said));
}

function progress(path, at) {
  return el('div', { class: 'refresher-far' },
    el('label', { for: 'refresher-progress' }, `Question ${at + 1} of ${path.questions.length}`),
    el('progress', { id: 'refresher-progress', max: path.questions.length, value: at }));
}

function onward(view) {
  const button = el('button', { type: 'button', class: 'main' }, 'Go on');
  button.addEventListener('click', async () => {
    try {
      next(view, await api.refresher(), true);
    } catch (trouble) {
      if (api.isGone(trouble)) showBanner(() => {});
    }
  });
  window.setTimeout(() => button.focus(), 0);
  return el('p', { class: 'form-foot' }, button);
}

function showSaid(place, reply) {
  const signs = { right: 'right', wrong: 'wrong', forgotten: 'noted', unread: 'wrong' };
  place.replaceChildren(el('div', { class: `said said-${reply.state === 'forgotten' ? 'noted' : reply.state}` },
    sign(signs[reply.state]),
    el('div', {}, el('p', { class: 'said-words' }, reply.words),
      reply.hintHtml ? prose(reply.hintHtml) : null,
      reply.workedHtml ? el('div', { class: 'worked' }, prose(reply.workedHtml)) : null,
      reply.source ? el('p', { class: 'source' }, 'Source: ', reply.source) : null)));
}

function end(view, path) {
  const faded = path.lessons.filter((lesson) => lesson.recall === 'faded');
  const held = path.lessons.filter((lesson) => lesson.recall !== 'faded');
  const minutes = faded.reduce((sum, lesson) => sum + lesson.minutes, 0);
  view.place.replaceChildren(...[
    el('h2', {}, path.words),
    faded.length ? el('p', {}, `Open ${faded.length === 1 ? 'this one' : 'these'} again, about ${minutes} minutes in all.`
      + `${held.length ? ' What the others hold, you still know.' : ''}`)
      : el('p', {}, 'You need not open any lesson again. Before you build, look through the cautions of your design.'),
    faded.length ? el('ul', { class: 'faded' }, ...faded.map((lesson) => el('li', {},
      el('a', { href: addressOf(lesson.id) }, lesson.title), el('span', { class: 'quiet' }, ` ${lesson.minutes} min, ${lesson.words}`)))) : null,
    held.length ? el('h3', {}, 'Still there') : null,
    held.length ? el('ul', { class: 'held' }, ...held.map((lesson) => el('li', {}, lesson.title,
      el('span', { class: 'quiet' }, ` ${lesson.words}`)))) : null,
    el('p', {}, 'Then set your old design beside the new one under ', el('a', { href: '#/rebuild' }, 'Rebuild'), '.'),
    el('p', {}, el('button', { type: 'button', onclick: () => again(view) }, 'Begin the refresher anew'))].filter(Boolean));
}

async function again(view) {
  try {
    const path = await api.refresherAgain();
    await view.changed();
    start(view, path);
    focusOn(view.main.querySelector('h1'));
  } catch (trouble) {
    if (api.isGone(trouble)) showBanner(() => {});
  }
}
