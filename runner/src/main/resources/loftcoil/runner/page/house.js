// The learner's house: stations in walking order. Each answer is kept at once; the house is a sketch until all of it fits together.
import * as api from './api.js';
import { clear, el, fittingCounts, say } from './dom.js';
import { showBanner } from './banner.js';
import { refreshLoop, watchLoop } from './loop.js';
import { figure } from './picture.js';
import { climateForm, habitsForm, placed, tapsTable, runTable } from './walked.js';

const ORIGINS = { yours: 'yours', assumed: 'assumed', borrowed: 'borrowed' };
const LONG = 24;
const LONG_LIST = 300;

export async function showHouse(main, taken) {
  const view = {
    main, taken, house: null, pending: new Map(), rows: new Map(), telling: Promise.resolve(),
    design: el('p', { class: 'quiet' }),
    such: el('span', {}),
    standing: el('div', { class: 'standing' }),
    stations: el('div', {}),
    said: el('div', { role: 'status' }),
    refused: el('div', { role: 'alert' }),
  };
  view.ask = (work, places) => ask(view, work, places);
  clear(main).append(el('article', { class: 'house' },
    el('h1', {}, 'Your house'),
    el('p', {}, 'Walk round your own house with a tape and tell what you find. Any unit will do: ', view.such, '. What you do not '
      + 'know stays borrowed from the example, and every sheet says so. Each answer is kept at once; nothing has to fit until the end.'),
    el('p', { class: 'quiet' }, 'A blank form to print and carry about: ', el('a', { href: '/sheet/form/a4', download: true }, 'A4'), ' or ',
      el('a', { href: '/sheet/form/letter', download: true }, 'US Letter'), '.'),
    view.design, view.standing, view.stations, foot(view), view.refused, view.said, fromAbove()));
  draw(view, await api.survey());
}

/** The design from above, as it is taken over; its runs lead as the survey told them. */
function fromAbove() {
  const place = el('div', {});
  watchLoop(place, (design) => place.replaceChildren(el('h2', {}, 'Your design from above'), figure(design.plan)));
  refreshLoop();
  return place;
}

function draw(view, house) {
  view.house = house;
  view.such.textContent = house.such.lengths;
  tellWhose(view);
  if (view.dwellings.children.length === 1) {
    view.dwellings.append(...house.dwellings.map((dwelling) => el('option', { value: dwelling.code }, dwelling.label)));
  }
  view.stations.replaceChildren(...house.stations.map((station, at) => stationFold(view, station, at)));
  tellStanding(view, house.standing);
}

function tellWhose(view) {
  view.design.textContent = `This is the survey of the design “${view.house.design}”, which is taken up. Each design has one of its own.`;
}

/** What came back after an answer: only what changed is drawn anew, so that whoever types keeps the place. */
function update(view, house) {
  view.house = house;
  tellWhose(view);
  for (const station of house.stations) {
    for (const question of station.questions) {
      const row = view.rows.get(question.path);
      if (row) row.update(question);
    }
    if (station.run.code) view.rows.get(`run-${station.run.code}`)?.update(station.run);
    view.rows.get(`station-${station.code}`)?.update(station);
  }
  view.rows.get('habits')?.update(house);
  tellStanding(view, house.standing);
}

function tellStanding(view, standing) {
  view.standing.classList.toggle('sketch', standing.sketch || standing.borrowed > 0);
  view.standing.replaceChildren(el('p', {}, el('strong', { tabindex: '-1' }, standing.words)),
    ...(standing.open.length ? [el('ul', {}, ...standing.open.map((line) => el('li', {}, line)))] : []),
    el('p', {}, standing.next),
    ...(standing.ahead ? [el('p', {}, standing.ahead)] : []),
    ...otherwise(view, standing),
    ...(standing.plan ? [el('p', {}, standing.plan)] : []),
    ...standing.doubts.map((doubt) => el('p', {}, el('strong', {}, 'Is this so? '), doubt)));
}

/** What is one's own in the design and would go if the house took its place. */
function otherwise(view, standing) {
  if (!standing.otherwise.length) return [];
  const follow = el('button', { type: 'button' }, 'Take into the house what I decided');
  follow.addEventListener('click', async () => {
    if (await view.ask(() => api.surveyFollow(), refusedHere(view))) { view.pending.clear(); await redraw(view); view.standing.querySelector('strong').focus(); }
  });
  return [el('p', {}, 'Yours in your design, and otherwise here. To make this house your design puts the second in the place of the first:'),
    el('ul', {}, ...standing.otherwise.map((line) => el('li', {}, line))),
    ...(standing.follows ? [el('p', {}, follow, ' What you told here stays.')] : [])];
}

async function ask(view, work, refused) {
  try {
    const house = await work();
    update(view, house);
    return true;
  } catch (trouble) {
    if (api.isGone(trouble)) showBanner(() => {});
    else refused(api.refusals(trouble));
    return false;
  }
}

function stationFold(view, station, at) {
  const inside = [el('p', {}, station.help)];
  if (station.counts.length) inside.push(fittingCounts(station.counts));
  if (station.run.code) inside.push(runTable(view, station.run));
  else if (station.code === 'taps') inside.push(tapsTable(view, station));
  if (station.code === 'climate') inside.push(climateForm(view, () => redraw(view)));
  if (station.code === 'people') inside.push(habitsForm(view));
  if (station.code === 'panes') inside.push(noPanes(view));
  inside.push(...station.questions.map((question) => questionRow(view, station, question)));
  const standing = el('span', { class: 'origin' });
  const mark = (now) => {
    standing.textContent = now.standing;
    standing.className = `origin origin-${now.done ? 'yours' : 'borrowed'}`;
  };
  view.rows.set(`station-${station.code}`, { update: mark });
  mark(station);
  return el('details', { class: 'station', id: `station-${station.code}`, open: at === 0 },
    el('summary', {}, `${at + 1}. ${station.label} `, standing), ...inside);
}

async function redraw(view) {
  const open = [...view.stations.querySelectorAll('details.station[open]')].map((fold) => fold.id);
  draw(view, await api.survey());
  for (const fold of view.stations.querySelectorAll('details.station')) fold.open = open.includes(fold.id);
}

function noPanes(view) {
  return el('p', {}, el('button', {
    type: 'button',
    onclick: async () => { if (await view.ask(() => api.surveyNoPanes(), refusedHere(view))) await redraw(view); },
  }, 'There is no glass before my tank'));
}

function refusedHere(view) {
  return (lines) => view.refused.replaceChildren(el('p', { class: 'trouble' }, 'Not taken:'), el('ul', {}, ...lines.map((one) => el('li', {}, placed(one)))));
}

function questionRow(view, station, question) {
  const name = `asked-${question.path.replace(/\W/g, '-')}`;
  const field = question.options.length ? chooser(name, question) : writer(name, question);
  const guess = el('input', { type: 'checkbox', id: `${name}-guess` });
  const origin = el('span', { class: 'origin' });
  const otherwise = el('p', { class: 'otherwise' });
  const trouble = el('p', { class: 'trouble', role: 'alert', hidden: true });
  const agree = el('button', { type: 'button', class: 'agree', 'aria-label': `It is so: ${question.label}` }, 'It is so');
  const row = el('div', { class: 'asked', id: name.replace('asked-', 'row-') },
    el('label', { for: name }, question.label),
    el('span', { class: `field ${question.now.length > LONG && !question.options.length ? 'wide-answer' : ''}` }, field,
      question.unit && !question.options.length ? el('span', { class: 'unit' }, question.unit) : null,
      el('label', { class: 'guess' }, guess, ' guessed'), origin, agree),
    el('div', { class: 'hint', id: `${name}-hint` }, ...hint(question), otherwise),
    trouble);
  const tell = () => {
    // What may be left out is taken back by emptying its field; anything else gets what stands there again.
    const typed = field.value.trim() || (shown.now.optional ? 'not said' : '');
    if (!typed || (typed === 'not said' && shown.now.now === typed)) { field.value = value(shown.now); return; }
    view.pending.set(question.path, { typed, guessed: guess.checked, station: station.code });
    tellStation(view, station.code);
  };
  // Who types what stands there already agrees with it, though a browser sees no change.
  let typed = false;
  field.addEventListener('input', () => { typed = true; });
  field.addEventListener('change', () => { typed = false; tell(); });
  field.addEventListener('blur', () => { if (typed && field.value === value(shown.now)) tell(); typed = false; });
  guess.addEventListener('change', tell);
  agree.addEventListener('click', tell);
  const marked = (now) => { mark(origin, now.origin); otherwise.textContent = now.otherwise; otherwise.hidden = !now.otherwise; agree.hidden = !['borrowed', 'assumed'].includes(now.origin); };
  const shown = {
    now: question,
    update: (now) => { shown.now = now; marked(now); if (document.activeElement !== field && !view.pending.has(now.path)) field.value = value(now); },
    trouble: (line) => { trouble.textContent = line; trouble.hidden = !line; field.setAttribute('aria-invalid', line ? 'true' : 'false'); },
  };
  view.rows.set(question.path, shown);
  marked(question);
  return row;
}

/** What is asked for. A long list of what is allowed waits until it is wanted. */
function hint(question) {
  if (question.options.length) return [question.help];
  if (question.allowed.length < LONG_LIST) return [`${question.help} Allowed: ${question.allowed}.`];
  return [question.help, el('details', {}, el('summary', {}, 'All that is allowed'), `${question.allowed}.`)];
}

/** One answer after the other, so that what was refused first cannot be told last. */
function tellStation(view, code) {
  view.telling = view.telling.then(() => tellWaiting(view, code));
}

/** What waits at a station goes together: of some parts all has to be told at once. */
async function tellWaiting(view, code) {
  const waiting = [...view.pending].filter(([, answer]) => answer.station === code);
  // Why an answer was refused stands until it is told anew; that it is lacking beside others would hide it.
  view.reasoned = new Set();
  for (const guessed of [false, true]) {
    let told = waiting.filter(([, answer]) => answer.guessed === guessed);
    while (told.length) {
      const refused = await tellTogether(view, told, guessed);
      if (!refused) break;
      const rest = told.filter(([path]) => !refused.includes(path));
      if (rest.length === told.length) {
        // What is lacking was not among them: each alone, so that only its own part waits for it.
        if (told.length > 1) for (const one of told) await tellTogether(view, [one], guessed);
        break;
      }
      told = rest;
    }
  }
}

/** Tells some answers at once; null where they were kept, else the paths that were refused. */
async function tellTogether(view, told, guessed) {
  const typed = Object.fromEntries(told.map(([path, answer]) => [path, answer.typed]));
  const paths = Object.keys(typed);
  let refused = null;
  paths.forEach((path) => view.rows.get(path)?.trouble(''));
  const done = await view.ask(() => api.surveyTell(typed, guessed), (lines) => { refused = refusedLines(view, lines); });
  if (!done) return refused ?? [];
  // What was typed meanwhile still waits.
  told.filter(([path, answer]) => view.pending.get(path) === answer).forEach(([path]) => view.pending.delete(path));
  paths.forEach((path) => view.rows.get(path)?.trouble(''));
  say([`Kept. ${view.house.standing.words}`, ...view.house.standing.doubts.map((doubt) => `Is this so? ${doubt}`)].join(' '));
  return null;
}

/** Says each refusal at its own row; the paths that were refused. */
function refusedLines(view, lines) {
  const refused = [];
  for (const { line, path, said } of lines) {
    const words = line.slice(path.length + 2);
    const row = view.rows.get(path);
    const missing = words.startsWith('missing');
    refused.push(path);
    if (missing && view.reasoned.has(path)) continue;
    if (!missing) view.reasoned.add(path);
    if (row) row.trouble(missing ? 'Tell this one too: these answers are taken together.' : `Not taken: ${words}`);
    else view.refused.replaceChildren(el('p', { class: 'trouble' }, `Not taken: ${said}`));
  }
  return refused;
}

function mark(place, origin) {
  place.textContent = ORIGINS[origin] ?? origin;
  place.className = `origin origin-${origin.replace(' ', '-')}`;
}

function value(question) {
  return question.now === 'not said' && !question.options.length ? '' : question.now;
}

function writer(name, question) {
  const field = el('input', { type: 'text', id: name, autocomplete: 'off', maxlength: '200', 'aria-describedby': `${name}-hint` });
  field.value = value(question);
  return field;
}

function chooser(name, question) {
  const words = { true: 'yes', false: 'no' };
  const unsaid = 'not said';
  const first = question.optional || question.now === unsaid ? [unsaid] : [];
  const known = [...first, ...question.options];
  const options = known.includes(question.now) ? known : [question.now, ...known];
  const field = el('select', { id: name, 'aria-describedby': `${name}-hint` },
    // Of what has to be told that nothing was said can be seen and not chosen.
    ...options.map((option) => el('option', { value: option, disabled: option === unsaid && !question.optional }, words[option] ?? option)));
  field.value = question.now;
  return field;
}

function foot(view) {
  const take = el('button', { type: 'button', class: 'main' }, 'Make it my design');
  take.addEventListener('click', async () => {
    view.refused.replaceChildren();
    try {
      const done = await api.surveyTake();
      view.said.replaceChildren(el('p', { class: 'said-words' }, done.words, ' ', el('a', { href: '#/build-sheet' }, 'Its build sheet'), ' tells all there is to know of it.'));
      await view.taken();
      update(view, await api.survey());
    } catch (trouble) {
      if (api.isGone(trouble)) showBanner(() => {});
      view.said.replaceChildren();
      const house = await api.survey();
      refusedHere(view)(house.standing.open.length ? house.standing.open.map((line) => ({ line, said: line })) : api.refusals(trouble));
    }
  });
  return el('p', { class: 'form-foot' }, take, ...beginAgain(view));
}

function beginAgain(view) {
  const from = el('select', { id: 'house-from' }, el('option', { value: '' }, 'your design as it stands'));
  view.dwellings = from;
  const afresh = el('button', { type: 'button' }, 'Begin again');
  afresh.addEventListener('click', async () => {
    if (!window.confirm('Begin again? What was measured since is kept in your folder, as survey-before- and the date. '
      + 'Begun from an example, the house has nothing of what you decided; above it you can take that into it again.')) return;
    if (await view.ask(() => api.surveyAfresh(from.value), refusedHere(view))) { view.pending.clear(); await redraw(view); }
  });
  return [el('label', { for: 'house-from' }, 'Begin again from'), from, afresh];
}
