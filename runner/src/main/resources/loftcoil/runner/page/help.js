// The help window: which keys do what. '?' opens it while nothing is being typed, unless the learner switched that off.
import { el, id } from './dom.js';

const OFF = 'loftcoil question mark off';
const KEYS = [
  ['Ctrl+Enter, or ⌘+Enter', 'Run the Java you are in'],
  ['Ctrl+Space', 'Show what can stand at the cursor; a dot shows it too'],
  ['Esc', 'Stop what runs; else leave the editor'],
  ['Tab', 'Move on. In an editor in which you have just typed: four spaces'],
  ['Enter', 'Send an answer'],
  ['← →', 'Move a slider by one stop; Page Up and Page Down by ten'],
];

export function setUpHelp() {
  const dialog = make();
  document.body.append(dialog);
  id('help-open').addEventListener('click', () => dialog.showModal());
  document.addEventListener('keydown', (event) => {
    if (event.key !== '?' || event.ctrlKey || event.metaKey || isTyping(event.target) || isOff()) return;
    event.preventDefault();
    if (!dialog.open) dialog.showModal();
  });
}

function make() {
  const key = el('input', { type: 'checkbox', checked: !isOff(), onchange: () => setOff(!key.checked) });
  const dialog = el('dialog', { class: 'help', 'aria-labelledby': 'help-title' },
    el('h2', { id: 'help-title', tabindex: '-1', autofocus: true }, 'How this works'),
    el('p', {}, 'Read down the page. Guess where you are asked to, run the Java, and change it as you like: it is ',
      'kept as you type, and “Put back the lesson’s text” brings back the first wording. Answers may be in any fitting unit, ',
      'such as “1.2 L/min” or “0.3 gal/min”, rounded as you would on paper, as a sum (“0.5*9.8*18 = 88 Pa”), a slope as “1 in 50”, a time ',
      'of day as “17:30” or “half past five in the afternoon”. Your decisions go into your own design, drawn under “Your loop”.'),
    el('h3', {}, 'Keys'),
    el('dl', { class: 'keys-list' }, ...KEYS.flatMap(([name, does]) => [el('dt', {}, el('kbd', {}, name)), el('dd', {}, does)])),
    el('p', {}, el('label', {}, key, ' The ? key opens this window')),
    el('p', {}, el('a', { href: '/page/licences.txt', target: '_blank', rel: 'noopener' }, 'Licences of the parts by others')),
    el('form', { method: 'dialog' }, el('button', { class: 'main' }, 'Close')));
  // The page's rules allow no form to be sent, not even to a window; so close it ourselves.
  dialog.querySelector('form').addEventListener('submit', (event) => { event.preventDefault(); dialog.close(); });
  return dialog;
}

function isTyping(target) {
  return target instanceof Element && target.closest('input:not([type=range]):not([type=radio]):not([type=checkbox]), textarea, select, [contenteditable], .CodeMirror') !== null;
}

function isOff() {
  try {
    return window.localStorage.getItem(OFF) === 'yes';
  } catch {
    return false;
  }
}

function setOff(off) {
  try {
    window.localStorage.setItem(OFF, off ? 'yes' : 'no');
  } catch { /* It then lasts only as long as the page. */ }
}
