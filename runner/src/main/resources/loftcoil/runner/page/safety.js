// The verdict on danger: one word for how grave it is, what was found, and what is not judged yet.
import { el, sign } from './dom.js';

const KINDS = {
  danger: ['danger', 'danger'], warning: ['caution', 'caution'], note: ['note', 'noted'], open: ['unjudged', 'noted'], clear: ['clear', 'right'],
};

export function safetyBox(safety) {
  const [kind, drawn] = KINDS[safety.level];
  const items = safety.findings.map((finding) => found(finding, safety.level));
  const leading = items.slice(0, safety.leading);
  const others = items.slice(safety.leading);
  return el('div', { class: `warning ${kind} safety`, role: 'note', 'aria-label': `What can hurt: ${safety.label}` },
    sign(drawn),
    el('div', {},
      el('p', { class: 'warning-word' }, safety.label),
      safety.open && el('p', { class: 'open' }, safety.open),
      safety.words && el('p', {}, safety.words),
      leading.length ? el('ul', {}, ...leading) : null,
      others.length ? el('details', { class: 'more' }, el('summary', {}, safety.more), el('ul', {}, ...others)) : null));
}

/** The word stands again only where it is milder than the one above. */
function found(finding, level) {
  const word = finding.severity === level ? null : el('strong', {}, `${finding.label}. `);
  return el('li', { 'data-code': finding.code, 'data-severity': finding.severity }, word, finding.text);
}
