// A question: something to type, choose or write in Java; what is said to it stands beneath.
import * as api from './api.js';
import { el, prose } from './dom.js';
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
  mend: { kind: 'Find the fault', button: 'Does it work now?' },
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
  const box = el('section', { class: `question ${step.asked}`, 'aria-labelledby': `q-${step.id}` },
    el('p', { class: 'question-kind' }, words.kind), heading, prose(step.html), current, form, reply);
  showCurrent(current, step.current);
  if (step.reply) showReply(reply, step.reply);
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const text = field.text();
    if (!text.trim()) return ask(reply, field, step);
    await send({ lesson, step, text, reply, button, current, key, afterReply });
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
  const words = { mend: 'Change something first.' }[step.form]
    || (step.options.length ? 'Choose one first.' : 'Type an answer first.');
  reply.replaceChildren(el('p', { class: 'quiet' }, words));
  field.focus();
}

async function send({ lesson, step, text, reply, button, current, key, afterReply }) {
  button.disabled = true;
  try {
    const said = await api.answer(lesson.id, step.id, text);
    if (!said.unsaved) forget(key);
    showReply(reply, said);
    if (said.stands) showCurrent(current, said.stands.current);
    await afterReply(said, step);
  } catch (trouble) {
    remember(key, text);
    if (api.isGone(trouble)) showBanner(() => {});
    reply.replaceChildren(el('p', { class: 'trouble' }, `Not sent: ${trouble.message} Your answer still stands above.`));
  } finally {
    button.disabled = false;
  }
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

function javaField(step, key, text, lessonId) {
  const frame = el('div', { class: 'code' });
  let editor = null;
  return {
    box: el('div', {}, el('p', { class: 'field-label' }, labelFor(step)), frame),
    text: () => editor.text(),
    focus: () => editor.focus(),
    placed(send, leave) {
      editor = makeEditor(frame, {
        label: `Java: ${step.label}. Control and Enter checks it; Escape leaves the editor.`,
        source: text, lesson: lessonId, step: step.id, changed: (now) => remember(key, now), run: send, leave,
      });
    },
  };
}
