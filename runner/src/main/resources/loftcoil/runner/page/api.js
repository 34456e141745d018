// What the page asks of Loftcoil. A failure is an Error with `status`: 0 where nothing answered.
const GONE = 'Loftcoil does not answer.';

/** The status of what the learner's folder could not take. */
const NOT_SAVED = 507;

async function ask(path, options) {
  let answer;
  try {
    answer = await fetch(`/api/${path}`, { credentials: 'same-origin', ...options });
  } catch (cause) {
    throw failure(0, GONE, cause);
  }
  let content = {};
  try {
    content = await answer.json();
  } catch (cause) {
    throw failure(0, GONE, cause);
  }
  const unsaved = answer.status === NOT_SAVED ? content.words : content.unsaved;
  if (unsaved) window.dispatchEvent(new CustomEvent('unsaved', { detail: unsaved }));
  if (!answer.ok) throw Object.assign(failure(answer.status, content.words || `Refused (${answer.status}).`), { said: content.said });
  return content;
}

export function failure(status, words, cause) {
  return Object.assign(new Error(words, { cause }), { status });
}

function post(path, body = {}, more = {}) {
  return ask(path, {
    method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), ...more,
  });
}

/** What was refused, a line each: with the path of its field first, by which its place is found, and with that place in words. */
export function refusals(trouble) {
  return trouble.message.split('\n').map((line, at) => ({ line, path: line.slice(0, line.indexOf(': ')), said: trouble.said?.[at] ?? line }));
}

/** True where Loftcoil has been closed, or started anew so that this page is no longer known. */
export function isGone(trouble) {
  return trouble.status === 0 || trouble.status === 401;
}

export const course = () => ask('course');
export const lesson = (lessonId) => ask(`lesson/${encodeURIComponent(lessonId)}`);
export const design = () => ask('design');
export const safety = () => ask('safety');
export const effect = () => ask('effect');
export const clears = () => ask('clears');
export const searchClears = () => post('clears-search');
export const stopClears = () => post('clears-stop');
export const followWay = (danger, way) => post('clears-follow', { danger, way });
export const build = () => post('build');
export const buildFar = () => ask('build-far');
export const buildStop = () => post('build-stop');
export const words = () => ask('words');
export const search = (text) => post('search', { text });
export const conduct = () => ask('conduct');
export const run = (lesson, step, source, dragged) => post('run', { lesson, step, source, dragged });
export const coarse = (lesson, step, source, dragged) => post('coarse', { lesson, step, source, dragged });
export const ahead = (lesson, step, source, dragged, stands) => post('ahead', { lesson, step, source, dragged, stands });
export const keep = (lesson, step, source, leaving = false) =>
  post('keep', { lesson, step, source }, { keepalive: leaving });
export const units = (units) => post('units', { units });
export const save = () => post('save');
export const putBack = (lesson, step) => post('put-back', { lesson, step });
export const answer = (lesson, step, text) => post('answer', { lesson, step, text });
export const mend = (lesson, step, moved) => post('mend', { lesson, step, moved });
export const complete = (lesson, step, source, cursor) => post('complete', { lesson, step, source, cursor });
export const tried = (lesson, step, value) => post('tried', { lesson, step, value });
export const stop = () => post('stop');
export const refresher = () => ask('refresher');
export const refresherAnswer = (question, text) => post('refresher-answer', { id: question, text });
export const refresherForgotten = (question) => post('refresher-forgotten', { id: question });
export const refresherAgain = () => post('refresher-again');
export const rebuild = () => ask('rebuild');
export const rebuildKept = (name) => post('rebuild-kept', { name });
export const rebuildFrom = (old, from) => post('rebuild-from', { old, from });
export const rebuildCompare = (old, changes, year) => post('rebuild-compare', { old, changes, year });
export const rebuildFar = () => ask('rebuild-far');
export const rebuildStop = () => post('rebuild-stop');
export const rebuildTake = (old, changes) => post('rebuild-take', { old, changes });
export const designs = () => ask('designs');
export const designsDo = (what, body) => post(`designs-${what}`, body);
export const survey = () => ask('survey');
export const surveyTell = (typed, guessed) => post('survey-tell', { typed, guessed });
export const surveyWalk = (run, pieces) => post('survey-walk', { run, pieces });
export const surveyTaps = (trunk, taps) => post('survey-taps', { trunk, taps });
export const surveyHabits = (habits) => post('survey-habits', { habits });
export const surveyNoPanes = () => post('survey-no-panes');
export const surveyAfresh = (from) => post('survey-afresh', { from });
export const surveyFollow = () => post('survey-follow');
export const surveyTake = () => post('survey-take');
export const surveyClimate = (text) => post('survey-climate', { text });
export const surveyEstimate = (typed) => post('survey-estimate', { typed });
