// Starts the page: reads the address, opens that lesson, keeps list, riser and loop in step with it.
import * as api from './api.js';
import { arrive, clear, el, id, say } from './dom.js';
import { showBanner } from './banner.js';
import { showLesson } from './lesson.js';
import { showLessons } from './lessons.js';
import { showWords } from './words.js';
import { showSearch } from './search.js';
import { offerMeanings } from './terms.js';
import { showConduct } from './conduct.js';
import { showBuildSheet } from './buildsheet.js';
import { showRebuild } from './rebuild.js';
import { showDesigns } from './designs.js';
import { showHouse } from './house.js';
import { showRefresher } from './refresher.js';
import { showRiser } from './riser.js';
import { refreshLoop } from './loop.js';
import { showUnits } from './units.js';
import { readAddress } from './address.js';
import { setUpHelp } from './help.js';
import { setUpFolds } from './folds.js';
import { keepFocus } from './focus.js';
import { clearOutline, goToUnanswered, showOutline } from './outline.js';

const state = { course: null, lesson: null };

/** What is no lesson, by its name in the address. */
const VIEWS = {
  words: { title: 'Words', open: openWords },
  search: { title: 'Search', open: (main, place) => showSearch(main, place) },
  emergency: { title: 'In an emergency', open: openConduct },
  refresher: { title: 'Refresher', open: (main) => showRefresher(main, refreshCourse) },
  'build-sheet': { title: 'Build sheet', open: (main) => showBuildSheet(main) },
  house: { title: 'Your house', open: (main) => showHouse(main, refreshLoop) },
  designs: { title: 'Designs', open: (main) => showDesigns(main, () => Promise.all([refreshCourse(), refreshLoop()])) },
  rebuild: { title: 'Rebuild', open: (main) => showRebuild(main, refreshLoop) },
};

async function refreshCourse() {
  state.course = await api.course();
  showUnits(state.course, drawAnew);
  showLessons(state.course, state.lesson ? state.lesson.id : '');
  showRiser(state.course, state.lesson);
}

/** After other units were chosen: all that is on the screen, where it is. */
async function drawAnew() {
  state.lesson = null;
  await follow();
  await refreshLoop();
}

function afterReply(reply, question) {
  const design = question.asked === 'decide' && reply.state === 'decided' ? refreshLoop() : Promise.resolve();
  showOutline(id('lesson'), state.lesson);
  return Promise.allSettled([refreshCourse(), design]);
}

async function openLesson(lessonId, step, asked) {
  const main = id('lesson');
  main.setAttribute('aria-busy', 'true');
  try {
    const address = window.location.hash;
    const lesson = await api.lesson(lessonId);
    if (window.location.hash !== address) return;
    const moved = state.lesson !== null;
    state.lesson = lesson;
    document.title = `${lesson.title} · Loftcoil`;
    const shown = showLesson(main, lesson, { course: state.course, afterReply });
    showOutline(main, lesson);
    offerMeanings(main).catch(() => {});
    await refreshCourse();
    shown.goTo(step || (asked ? '' : lesson.at), { focus: moved, marked: !step && !asked });
  } catch (trouble) {
    if (trouble.status !== 404) throw trouble;
    state.lesson = null;
    clearOutline();
    document.title = 'No such lesson · Loftcoil';
    clear(main).append(
      el('h1', {}, 'No such lesson'),
      el('p', {}, `There is no lesson named “${lessonId}”. Choose one from the list.`));
    await refreshCourse();
    arrive(main);
  } finally {
    main.removeAttribute('aria-busy');
  }
}

async function openWords(main, place, stillWanted) {
  const words = await api.words();
  if (stillWanted()) showWords(main, words).goTo(place);
}

async function openConduct(main, place, stillWanted) {
  const table = await api.conduct();
  if (stillWanted()) showConduct(main, table);
}

async function openView(name, place) {
  const main = id('lesson');
  const address = window.location.hash;
  // Who moves on fast must not be overtaken by what was asked for before.
  const stillWanted = () => window.location.hash === address;
  main.setAttribute('aria-busy', 'true');
  try {
    state.lesson = null;
    clearOutline();
    document.title = `${VIEWS[name].title} · Loftcoil`;
    await refreshCourse();
    if (stillWanted()) await VIEWS[name].open(main, place, stillWanted);
    if (stillWanted() && !main.contains(document.activeElement)) arrive(main);
  } finally {
    main.removeAttribute('aria-busy');
  }
}

function markView(name) {
  for (const link of document.querySelectorAll('a[data-view]')) {
    if (link.dataset.view === name) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }
}

async function follow() {
  const { lesson, step } = readAddress();
  try {
    markView(Object.hasOwn(VIEWS, lesson) ? lesson : 'course');
    if (!state.course) await refreshCourse();
    if (Object.hasOwn(VIEWS, lesson)) return await openView(lesson, step);
    if (!state.course.lessons.length) return emptyCourse();
    const wanted = lesson || state.course.open || state.course.lessons[0].id;
    if (state.lesson && state.lesson.id === wanted && step) {
      const place = document.getElementById(`step-${step}`);
      if (place) { place.scrollIntoView(); place.focus({ preventScroll: true }); }
    } else {
      await openLesson(wanted, step, false);
    }
  } catch (trouble) {
    showTrouble(trouble);
  }
}

function emptyCourse() {
  clear(id('lesson')).append(
    el('h1', {}, 'No lessons yet'),
    el('p', {}, 'This copy of Loftcoil holds no lessons.'));
}

function showTrouble(trouble) {
  if (api.isGone(trouble)) showBanner(follow);
  else say(trouble.message);
  const main = id('lesson');
  if (main.querySelector('.waiting')) {
    clear(main).append(el('h1', {}, 'The lesson did not open'), el('p', {}, trouble.message));
  }
}

keepFocus();
setUpFolds();
setUpHelp();
window.addEventListener('hashchange', follow);
function skip(name, to) {
  id(name).addEventListener('click', (event) => {
    event.preventDefault();
    to();
  });
}
skip('skip', () => arrive(id('lesson'), { scroll: false }));
skip('skip-loop', () => {
  id('loop-fold').open = true;
  id('loop-place').focus();
});
skip('skip-question', goToUnanswered);
follow().then(() => refreshLoop()).catch(showTrouble);
