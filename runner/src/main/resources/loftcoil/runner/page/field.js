// What an answer is given in: a line to type in with its unit, or texts to choose one of.
import { el } from './dom.js';

/** A line to type in. */
export function typedField(unit, { name, label, text = '', changed = () => {} }) {
  const input = el('input', {
    type: 'text', id: name, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', maxlength: '200',
    'aria-describedby': unit ? `${name}-unit` : null, oninput: () => changed(input.value),
  });
  input.value = text;
  const after = unit && el('span', { class: 'unit', id: `${name}-unit` },
    el('span', { class: 'unseen' }, 'in '), unit, el('span', { class: 'unseen' }, ', or write another unit'));
  return {
    box: el('div', { class: 'typed' }, el('label', { for: name }, label), el('span', { class: 'typed-line' }, input, after)),
    text: () => input.value, focus: () => input.focus(),
  };
}

/** Texts of which one is chosen. */
export function choiceField(options, { name, label, text = '', changed = () => {} }) {
  const inputs = options.map((option) => el('input', {
    type: 'radio', name, value: option, checked: option === text, onchange: () => changed(option),
  }));
  return {
    box: el('fieldset', {}, el('legend', {}, label),
      ...inputs.map((input, n) => el('label', { class: 'option' }, input, el('span', {}, options[n])))),
    text: () => (inputs.find((input) => input.checked) || { value: '' }).value,
    focus: () => inputs[0].focus(),
  };
}
