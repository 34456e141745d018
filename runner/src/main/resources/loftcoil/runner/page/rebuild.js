// Rebuild: an old design with its levers, and old and new side by side. Nothing is kept until it is taken over.
import * as api from './api.js';
import { clear, el, hold, isHeld, say } from './dom.js';
import { showBanner } from './banner.js';
import { leverBox } from './levers.js';
import { showSideBySide } from './sidebyside.js';
import { workBox } from './work.js';

const AFTER_MS = 500;
const FAR_MS = 400;
const MOST_BYTES = 1_000_000;

export async function showRebuild(main, taken) {
  const view = {
    main, taken, start: null, values: {}, timer: 0, asked: 0,
    levers: el('section', { 'aria-label': 'What to change' }),
    result: el('section', { 'aria-label': 'Before and after', class: 'result-place' }),
    trouble: el('div', { role: 'alert' }),
    from: el('p', { class: 'quiet' }),
  };
  clear(main).append(el('article', { class: 'rebuild' },
    el('h1', {}, 'Rebuild'),
    el('p', {}, 'Set the system as it stands beside the one you have in mind. Change what you like below: '
      + 'your design stays as it is until you take the new one over.'),
    chooser(view), view.from, view.levers, view.trouble, view.result));
  begin(view, await api.rebuild());
}

function begin(view, start) {
  view.start = start;
  view.values = {};
  view.from.textContent = `The old design: ${start.name} (${start.from}).`;
  view.trouble.replaceChildren();
  view.levers.replaceChildren(
    el('h2', {}, 'What to change'),
    ...start.parts.map((part) => leverBox(part, (name, value) => set(view, name, value))),
    el('p', { class: 'form-foot' },
      el('button', { type: 'button', onclick: () => compare(view, true) }, 'March the year too'),
      el('button', { type: 'button', onclick: () => begin(view, start) }, 'Put all back')));
  view.kept.replaceChildren(...keptOptions(start));
  compare(view, false);
}

function set(view, name, value) {
  if (value === null) delete view.values[name];
  else view.values[name] = value;
  window.clearTimeout(view.timer);
  view.timer = window.setTimeout(() => compare(view, false), AFTER_MS);
}

async function compare(view, year) {
  window.clearTimeout(view.timer);
  view.asked += 1;
  const mine = view.asked;
  view.result.setAttribute('aria-busy', 'true');
  const waiting = year ? marching(view, mine) : null;
  try {
    const both = await api.rebuildCompare(view.start.json, view.values, year);
    if (mine !== view.asked || !view.result.isConnected) return;
    view.trouble.replaceChildren();
    markRefused(view, []);
    showSideBySide(view.result, both, Object.keys(view.values).length ? takeOver(view) : null);
    say(year ? (both.year ? 'Before and after, with the year.' : both.noYear || 'Stopped: before and after, without the year.') : `${both.effects.length} changes. ${both.afterWords}`);
  } catch (trouble) {
    if (mine === view.asked) refused(view, trouble);
  } finally {
    if (waiting) waiting.done();
    if (mine === view.asked) view.result.removeAttribute('aria-busy');
  }
}

/** How far the years are, and a way to stop them; gone when they are done. */
function marching(view, mine) {
  const box = workBox('The year is being marched.', () => { api.rebuildStop().catch(() => {}); }, { id: 'rebuild-stop' });
  view.trouble.before(box.box);
  say('The year is being marched; that takes some seconds. It can be stopped.');
  const look = async () => {
    if (!box.box.isConnected || mine !== view.asked) return box.done();
    try {
      const { done, of } = await api.rebuildFar();
      if (of) box.far((100 * done) / of, `Years marched: ${done} of ${of}.`);
    } catch { /* The answer itself will tell. */ }
    window.setTimeout(look, FAR_MS);
  };
  look();
  return box;
}

function refused(view, trouble) {
  if (api.isGone(trouble)) return showBanner(() => compare(view, false));
  view.result.replaceChildren();
  view.trouble.replaceChildren(
    el('p', { class: 'trouble' }, 'This cannot be built:'),
    el('ul', {}, ...api.refusals(trouble).map(({ said }) => el('li', {}, said))));
  markRefused(view, api.refusals(trouble).map(({ line }) => line));
}

/** The fields that a refusal names say so themselves too. */
function markRefused(view, lines) {
  const names = lines.map((line) => `lever-${line.slice(0, line.indexOf(': ')).replace(/\W/g, '-')}`);
  for (const field of view.levers.querySelectorAll('input, select')) {
    if (names.includes(field.id)) field.setAttribute('aria-invalid', 'true');
    else field.removeAttribute('aria-invalid');
  }
}

function takeOver(view) {
  const said = el('div', { role: 'status' });
  const button = el('button', { type: 'button', class: 'main' }, 'Take it over as my design');
  button.addEventListener('click', async () => {
    if (isHeld(button)) return;
    hold(button, true);
    try {
      const done = await api.rebuildTake(view.start.json, view.values);
      said.replaceChildren(el('p', { class: 'said-words' }, done.words));
      await view.taken();
      view.kept.replaceChildren(...keptOptions({ kept: [done.kept, ...view.start.kept] }));
    } catch (trouble) {
      if (api.isGone(trouble)) showBanner(() => {});
      said.replaceChildren(el('p', { class: 'trouble' }, `Not taken over: ${api.refusals(trouble).map(({ said }) => said).join(' ')}`));
      hold(button, false);
    }
  });
  return el('div', { class: 'take' }, button, said);
}

/** Which old design: the learner's own, one the folder keeps, or a file that the page reads itself. */
function chooser(view) {
  const file = el('input', { type: 'file', id: 'rebuild-file', accept: '.json,application/json' });
  file.addEventListener('change', () => readFile(view, file));
  view.kept = el('select', { id: 'rebuild-kept' });
  view.kept.addEventListener('change', () => open(view, () => (view.kept.value ? api.rebuildKept(view.kept.value) : api.rebuild())));
  return el('details', { class: 'chooser' }, el('summary', {}, 'Start from another old design'),
    el('p', { class: 'lever' }, el('label', { for: 'rebuild-kept' }, 'In your folder'), view.kept),
    el('p', { class: 'lever' }, el('label', { for: 'rebuild-file' }, 'A design file, JSON'), file));
}

function keptOptions(start) {
  return [el('option', { value: '' }, 'Your design as it stands'),
    ...start.kept.map((name) => el('option', { value: name, selected: name === start.from }, name))];
}

async function readFile(view, input) {
  const [file] = input.files;
  if (!file) return;
  if (file.size > MOST_BYTES) return refused(view, new Error(`${file.name}: ${file.size} bytes, too long for a design`));
  const text = await file.text();
  await open(view, () => api.rebuildFrom(text, file.name));
}

async function open(view, asking) {
  try {
    begin(view, await asking());
  } catch (trouble) {
    if (api.isGone(trouble)) return showBanner(() => {});
    refused(view, trouble);
    view.trouble.prepend(el('p', { class: 'trouble' }, 'That is no design that can be read; the one below is still the one before.'));
    view.asked += 1;
  }
}
