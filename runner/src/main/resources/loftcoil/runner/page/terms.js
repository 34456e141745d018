// A bold term opens its meaning where it stands. Esc or Close puts it away, and the focus goes back to the term.
import * as api from './api.js';
import { el, prose, say } from './dom.js';

let known = null;

/** Letters alone count: 'Hot legs' is the term 'hot leg'. */
function keyOf(words) {
  return words.toLowerCase().normalize('NFD').replace(/\s+/g, ' ').replace(/[^a-z0-9 ]+/g, '').replace(/s\b/g, '').trim();
}

async function glossary() {
  if (!known) {
    const { terms } = await api.words();
    known = new Map(terms.map((term) => [keyOf(term.name), term]));
  }
  return known;
}

/** Makes the bold terms of what stands in `main` open their meaning. */
export async function offerMeanings(main) {
  const terms = await glossary();
  for (const bold of main.querySelectorAll('.prose strong')) {
    const term = terms.get(keyOf(bold.textContent));
    if (term && !bold.querySelector('button')) offer(bold, term);
  }
}

function offer(bold, term) {
  const button = el('button', { type: 'button', class: 'term', 'aria-expanded': 'false' }, ...bold.childNodes);
  let box = null;
  const close = () => {
    if (!box) return;
    const inside = box.contains(document.activeElement);
    box.remove();
    box = null;
    button.setAttribute('aria-expanded', 'false');
    if (inside) button.focus();
  };
  const open = () => {
    box = el('div', { class: 'term-box', role: 'note', 'aria-label': `Meaning of ${term.name}` },
      prose(term.html),
      el('p', { class: 'form-foot' }, el('button', { type: 'button', class: 'link', onclick: () => { button.focus(); close(); } }, 'Close'),
        el('a', { href: `#/words/${encodeURIComponent(term.name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, ''))}` }, 'All words')));
    box.addEventListener('keydown', (event) => { if (event.key === 'Escape') { button.focus(); close(); } });
    place(bold, box);
    button.setAttribute('aria-expanded', 'true');
    say(box.querySelector('.prose').textContent);
  };
  button.addEventListener('click', () => (box ? close() : open()));
  button.addEventListener('keydown', (event) => { if (event.key === 'Escape') close(); });
  bold.append(button);
}

/** Under the line it stands in: within an item of a list or a cell, after a paragraph. */
function place(bold, box) {
  const block = bold.closest('li, td, p, blockquote, h2, h3');
  if (block && block.matches('li, td')) block.append(box);
  else (block || bold).after(box);
}
