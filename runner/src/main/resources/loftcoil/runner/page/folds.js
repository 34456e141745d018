// On narrow screens the list of lessons and the loop fold away; on wide ones they always stand open.
import { id } from './dom.js';

function follow(query, fold) {
  const set = () => { fold.open = query.matches; };
  query.addEventListener('change', set);
  set();
  fold.querySelector('summary').addEventListener('click', (event) => {
    if (query.matches) event.preventDefault();
  });
  const reach = () => { fold.querySelector('summary').tabIndex = query.matches ? -1 : 0; };
  query.addEventListener('change', reach);
  reach();
}

export function setUpFolds() {
  follow(window.matchMedia('(min-width: 60rem)'), id('lessons-fold'));
  follow(window.matchMedia('(min-width: 60rem)'), id('outline-fold'));
  follow(window.matchMedia('(min-width: 76rem)'), id('loop-fold'));
}
