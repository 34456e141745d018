// What is said of a faulty system before anything is moved: two readings, then a cause with its reason.
import { clear, el } from './dom.js';

const READINGS = 2;

/** Two readings to choose, and the causes once they are; its text is `read = 1 3; cause = 2`. */
export function diagnosisField(start, id, touched) {
  const taken = new Set(start.readings.filter((reading) => reading.taken).map((reading) => reading.number));
  let cause = (start.causes.find((each) => each.named) || { number: 0 }).number;
  const rows = start.readings.map((reading) => row(reading, (on) => {
    if (on) taken.add(reading.number); else taken.delete(reading.number);
    free();
    touched();
  }));
  const causes = el('fieldset', { class: 'diagnosis-causes' });
  const box = el('div', { class: 'diagnosis' },
    el('fieldset', { class: 'diagnosis-readings' },
      el('legend', {}, 'Which two readings would tell?'), ...rows.map((each) => each.box)),
    causes);
  causes.hidden = true;

  function free() {
    for (const each of rows) each.input.disabled = taken.size >= READINGS && !each.input.checked;
    if (taken.size < READINGS) { causes.hidden = true; cause = 0; }
  }

  function show(view) {
    for (const each of rows) {
      const { value } = view.readings.find((reading) => reading.number === each.number);
      // Said aloud when it comes: written again it would be said again.
      if (each.value.textContent !== value) each.value.textContent = value;
    }
    if (!view.causes.length) return;
    if (causes.hidden) {
      clear(causes).append(el('legend', {}, 'What is the cause, and why?'),
        ...view.causes.map((each) => option(each, id, each.number === cause, () => { cause = each.number; touched(); })));
      causes.hidden = false;
    }
  }

  free();
  show(start);
  return {
    box,
    show,
    text: () => [taken.size ? `read = ${[...taken].sort((a, b) => a - b).join(' ')}` : '', cause ? `cause = ${cause}` : '']
      .filter(Boolean).join('; '),
  };
}

function row(reading, changed) {
  const input = el('input', { type: 'checkbox' });
  input.checked = reading.taken;
  input.addEventListener('change', () => changed(input.checked));
  const value = el('output', {}, reading.value);
  return { box: el('label', {}, input, el('span', {}, reading.label), value), input, value, number: reading.number };
}

function option(cause, id, named, chosen) {
  const input = el('input', { type: 'radio', name: `cause-${id}` });
  input.checked = named;
  input.addEventListener('change', chosen);
  return el('label', {}, input, el('span', {}, cause.text));
}
