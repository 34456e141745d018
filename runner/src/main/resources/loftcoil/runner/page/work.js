// Long work: a box that says what is being worked out and how far it is, and a stop; Esc stops it too.
import { el } from './dom.js';
import { running } from './running.js';

/** Begins a box. `stop` ends the work; `far(percent, words)` tells how far it is, without a number where that is not known. */
export function workBox(words, stop, { id } = {}) {
  const said = el('span', { class: 'work-words' }, words);
  const bar = el('progress', { max: '100', 'aria-label': words });
  const end = () => {
    if (!box.isConnected) return;
    said.textContent = 'Stopping…';
    stop();
  };
  const button = el('button', { type: 'button', class: 'work-stop', id, onclick: end }, 'Stop');
  const box = el('p', { class: 'work-box' }, said, bar, button);
  const quiet = running(end);
  return {
    box,
    far(percent, now) {
      if (percent === null) bar.removeAttribute('value');
      else bar.value = percent;
      if (now && said.textContent !== now && said.textContent !== 'Stopping…') said.textContent = now;
    },
    done() {
      quiet();
      box.remove();
    },
  };
}
