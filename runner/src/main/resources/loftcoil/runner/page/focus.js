// Whoever works by keyboard keeps the place: where the part that has the focus is taken away, hidden or disabled, the focus goes
// to the one that took its place, else to what stood next to it, else to what it stood in.
const STOPS = 'a[href], button, input, select, textarea, summary, [tabindex], [contenteditable="true"]';
const WAIT_MS = 60;

let last = null;
let timer = 0;

/** Watches the whole page. Who moves the focus by intent is quicker and wins. */
export function keepFocus() {
  document.addEventListener('focusin', (event) => { last = noted(event.target); });
  new MutationObserver(() => {
    if (!last || timer || !isLost()) return;
    timer = window.setTimeout(() => { timer = 0; mend(); }, WAIT_MS);
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ['hidden', 'disabled', 'open', 'aria-busy'] });
}

function noted(place) {
  const all = [...document.querySelectorAll(STOPS)].filter(canHold);
  const at = all.indexOf(place);
  const within = [];
  for (let up = place.parentElement; up && up !== document.body; up = up.parentElement) within.push(up);
  return { place, id: place.id, words: wordsOf(place), after: all.slice(at + 1, at + 4), before: all.slice(Math.max(0, at - 3), at).reverse(), within };
}

function isLost() {
  const now = document.activeElement;
  if (now && now !== document.body && now !== last.place) return false;
  return !(last.place.isConnected && canHold(last.place));
}

function mend() {
  // What is being opened will say itself where the focus belongs.
  if (!isLost() || document.querySelector('main[aria-busy]')) return;
  const { place, id, words, after, before, within } = last;
  const around = within.find((each) => each.isConnected && isShown(each));
  const same = (id && document.getElementById(id))
    || (around && [...around.querySelectorAll(place.localName)].find((each) => canHold(each) && wordsOf(each) === words));
  const near = [same, ...after.filter((each) => around && around.contains(each)), ...before.filter((each) => around && around.contains(each))]
    .find((each) => each && each.isConnected && canHold(each));
  if (near) return near.focus();
  if (!around) return undefined;
  if (!around.hasAttribute('tabindex')) around.tabIndex = -1;
  return around.focus({ preventScroll: true });
}

function canHold(each) {
  return isShown(each) && !each.disabled;
}

function isShown(each) {
  return each.getClientRects().length > 0;
}

function wordsOf(each) {
  return each.getAttribute('aria-label') || each.getAttribute('name') || (each.localName === 'input' ? '' : each.textContent);
}
