// A question: something to type, choose or write in Java; what is said to it stands beneath.
import * as api from './api.js';
import { el, hold, isHeld, prose, say } from './dom.js';
import { choiceField, typedField } from './field.js';
import { makeEditor } from './editor.js';
import { showBanner } from './banner.js';
import { showReply } from './reply.js';
import { mendField } from './mend.js';
import { forget, remember, remembered } from './keep.js';

const WORDS = {
  predict: { kind: 'Before you run it', button: 'Note my guess' },
  question: { kind: 'Question', button: 'Check' },
  again: { kind: 'From an earlier lesson', button: 'Check' },
  decide: { kind: 'Your decision', button: 'Put it in my design' },
  mend: { kind: 'Find the fault', button: 'Is that it?' },
};

export function questionStep(step, { lesson, outline, afterReply }) {
  const words = WORDS[step.form === 'mend' ? 'mend' : step.asked];
  const key = `answer ${lesson.id}/${step.id}`;
  const reply = el('div', { class: 'reply', 'aria-live': 'polite' });
  const button = el('button', { type: 'submit', class: 'main' }, words.button);
  const current = el('p', { class: 'current' });
  const field = fieldFor(step, key, remembered(key) ?? (step.reply ? step.reply.answer : ''), lesson.id);
  const form = el('form', { novalidate: true }, field.box, el('div', { class: 'form-foot' }, button));
  const level = Math.min(outline.level + 1, 6);
  const heading = el(`h${level}`, { class: 'question-label', 'data-own': 'yes', id: `q-${step.id}` }, step.label);
  const box = el('section', {
    class: `question ${step.asked}`, 'aria-labelledby': `q-${step.id}`, 'data-asked': step.asked,
    'data-state': step.reply ? step.reply.state : null,
  },
    el('p', { class: 'question-kind' }, words.kind), heading, prose(step.html), current, form, reply);
  showCurrent(current, step.current);
  if (step.reply) showReply(reply, step.reply);
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    if (isHeld(button)) return;
    const text = field.text();
    if (!text.trim()) return ask(reply, field, step);
    await send({ lesson, step, text, reply, button, current, key, afterReply, box, answered: field.answered });
  });
  form.addEventListener('moved', () => outdate(reply));
  box.addEventListener('placed', () => field.placed(() => form.requestSubmit(), () => button.focus()), { once: true });
  return box;
}

/** The value as the design now has it, in its own unit, however it was typed. */
function showCurrent(place, current) {
  place.hidden = !current;
  place.replaceChildren('In your design now: ', el('strong', {}, current));
}

/** What was said was said of the levers as they stood then. */
function outdate(reply) {
  if (!reply.querySelector('.said') || reply.querySelector('.outdated')) return;
  reply.prepend(el('p', { class: 'quiet outdated' }, 'You have moved something since. Before that, this was said:'));
}

function ask(reply, field, step) {
  const words = { mend: 'Choose two readings, or change something, first.', java: 'Write it, or choose one in every line, first.' }[step.form]
    || (step.options.length ? 'Choose one first.' : 'Type an answer first.');
  reply.replaceChildren(el('p', { class: 'quiet' }, words));
  field.focus();
}

async function send({ lesson, step, text, reply, button, current, key, afterReply, box, answered }) {
  hold(button, true);
  const checked = checking(reply);
  try {
    const said = await api.answer(lesson.id, step.id, text);
    checked();
    if (!said.unsaved) forget(key);
    showReply(reply, said);
    box.dataset.state = said.state;
    if (said.stands) showCurrent(current, said.stands.current);
    if (answered) answered(said);
    await afterReply(said, step);
  } catch (trouble) {
    remember(key, text);
    if (api.isGone(trouble)) showBanner(() => {});
    reply.replaceChildren(el('p', { class: 'trouble' }, `Not sent: ${trouble.message} Your answer still stands above.`));
  } finally {
    checked();
    hold(button, false);
  }
}

/** An old verdict must not stand as if it were of what is being checked. */
function checking(reply) {
  reply.setAttribute('aria-busy', 'true');
  reply.classList.add('checking');
  const slow = window.setTimeout(() => reply.prepend(el('p', { class: 'quiet' }, 'Checking…')), 300);
  return () => {
    window.clearTimeout(slow);
    reply.classList.remove('checking');
    reply.removeAttribute('aria-busy');
  };
}

function fieldFor(step, key, text, lessonId) {
  if (step.form === 'mend') return mendField(step, key, text, lessonId);
  if (step.form === 'java') return javaField(step, key, text || step.starter, lessonId);
  const asked = { name: `answer-${step.id}`, label: labelFor(step), text, changed: (now) => remember(key, now) };
  const field = step.options.length ? choiceField(step.options, asked) : typedField(step.unit, asked);
  return { ...field, placed: () => {} };
}

function labelFor(step) {
  return { predict: 'Your guess', decide: 'New value' }[step.asked] || 'Your answer';
}

/** Java to write, or line by line to choose, where the question has that. */
function javaField(step, key, text, lessonId) {
  const written = writtenJava(step, key, text, lessonId);
  if (!step.lines.length) return written;
  const lines = chosenLines(step, (now) => remember(key, now));
  const other = el('button', { type: 'button', class: 'plain' });
  let choosing = !step.reply && window.matchMedia('(pointer: coarse)').matches;
  const follow = () => {
    written.box.hidden = choosing;
    lines.box.hidden = !choosing;
    other.textContent = choosing ? 'Write it instead' : 'Choose the lines instead of writing them';
    if (!choosing) written.refresh();
  };
  other.addEventListener('click', () => {
    choosing = !choosing;
    follow();
    (choosing ? lines : written).focus();
  });
  return {
    box: el('div', {}, other, written.box, lines.box),
    text: () => (choosing ? lines.text() : written.text()),
    focus: () => (choosing ? lines : written).focus(),
    placed(send, leave) { written.placed(send, leave); follow(); },
  };
}

/** Lines of which some are fixed; in the others one is chosen. Empty as text until each is. */
function chosenLines(step, changed) {
  const picked = step.lines.map((line) => (line.length === 1 ? line[0] : null));
  const text = () => (picked.includes(null) ? '' : picked.join('\n'));
  // A fixed line may be several lines of Java: what is chosen is named by its place on the screen.
  const above = (n) => step.lines.slice(0, n).reduce((sum, line) => sum + line[0].split('\n').length, 0);
  const box = el('div', { class: 'chosen-lines' }, ...step.lines.map((line, n) => (line.length === 1
    ? el('pre', {}, line[0])
    : el('fieldset', {}, el('legend', {}, `Line ${above(n) + 1}: choose`), ...line.map((java) => el('label', { class: 'option' },
      el('input', {
        type: 'radio', name: `line-${step.id}-${n}`, onchange: () => { picked[n] = java; if (text()) changed(text()); },
      }), el('pre', {}, java)))))));
  return { box, text, focus: () => box.querySelector('input').focus() };
}

function writtenJava(step, key, text, lessonId) {
  const frame = el('div', { class: 'code' });
  const back = el('button', { type: 'button', class: 'plain' }, 'Put back the lesson’s text');
  const undo = el('button', { type: 'button', class: 'plain', hidden: true }, 'Undo putting back');
  let editor = null;
  let before = '';
  const offer = () => { back.hidden = editor.text() === step.starter; };
  const put = (java) => { editor.setText(java); remember(key, java); offer(); };
  back.addEventListener('click', () => {
    before = editor.text();
    put(step.starter);
    undo.hidden = false;
    undo.focus();
    say('The lesson’s text is back. Undo brings yours again.');
  });
  undo.addEventListener('click', () => {
    put(before);
    undo.hidden = true;
    editor.focus();
    say('Your text is back.');
  });
  return {
    box: el('div', {}, el('p', { class: 'field-label' }, labelFor(step)), frame, el('div', { class: 'form-foot' }, back, undo)),
    text: () => editor.text(),
    focus: () => editor.focus(),
    refresh: () => editor.refresh(),
    placed(send, leave) {
      editor = makeEditor(frame, {
        label: `Java: ${step.label}. Control and Enter checks it; Escape leaves the editor.`,
        source: text, lesson: lessonId, step: step.id, run: send, leave,
        changed: (now) => { remember(key, now); undo.hidden = true; offer(); },
      });
      offer();
    },
  };
}
