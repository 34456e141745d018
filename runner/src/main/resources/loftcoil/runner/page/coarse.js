// A slider whose Java takes its time: at once a coarse picture from values near by, marked as such, until the whole one is there.
import * as api from './api.js';
import { el, say } from './dom.js';
import { exchangeDrawn } from './picture.js';

/** What takes no longer than this needs no coarse picture. */
const AT_ONCE_MS = 90;

/** Where along the slider it is run ahead, so that there is something to draw from: the ends first. */
const AHEAD = [0, 1, 0.5, 0.25, 0.75];

const DRAWN = 'Coarse picture, words from before. The whole one follows.';
const OLD = 'Still of the value before. The picture of this one follows.';

/** For one snippet with a slider: `ask` gives the names of lesson and step and the Java; `place` is where its pictures are. */
export function makeCoarse(place, drag, ask) {
  const state = { took: 0, turn: 0, marked: false, aheadOf: '', left: [] };
  const dragged = (value) => ({ [drag.variable]: value });

  /** The slider was moved to a value. */
  async function moved(value) {
    state.turn += 1;
    const mine = state.turn;
    if (state.took < AT_ONCE_MS) return;
    const { lesson, step, source } = ask();
    const { charts } = await api.coarse(lesson, step, source, dragged(value));
    const frames = [...place.querySelectorAll('figure')];
    // The whole one may have come first, or the slider may have gone on.
    if (mine !== state.turn || !frames.length) return;
    const drawn = charts.length === frames.length;
    if (drawn) charts.forEach((chart, n) => exchangeDrawn(frames[n], chart));
    mark(drawn ? DRAWN : OLD);
  }

  function mark(words) {
    place.classList.add('is-coarse');
    let note = place.querySelector('.coarse');
    if (!note) {
      note = el('p', { class: 'coarse' });
      place.prepend(note);
    }
    note.textContent = words;
    // Said once for all stops on the way.
    if (!state.marked) say(words);
    state.marked = true;
  }

  /** The whole one is there, and how long it took; or it will not come. */
  function whole(ms = state.took) {
    state.turn += 1;
    state.took = ms;
    state.marked = false;
    place.classList.remove('is-coarse');
    place.querySelector('.coarse')?.remove();
  }

  /** Runs one more value ahead where that is worth while; true where there was one. */
  async function ahead(stands) {
    const { lesson, step, source } = ask();
    if (state.took < AT_ONCE_MS) return false;
    if (state.aheadOf !== source) {
      state.aheadOf = source;
      state.left = AHEAD.map((part) => stop(drag, part));
    }
    const next = state.left.shift();
    if (next === undefined) return false;
    await api.ahead(lesson, step, source, dragged(next), dragged(stands));
    return true;
  }

  return { moved, whole, ahead };
}

/** The stop of the slider at that part of its way, metric. */
function stop(drag, part) {
  const shown = drag.from + drag.by * Math.round(((drag.to - drag.from) / drag.by) * part);
  return Number((shown * drag.one + drag.nought).toPrecision(9));
}
