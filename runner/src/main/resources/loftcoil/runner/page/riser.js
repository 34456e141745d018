// The pipe beside the text: it fills from the bottom as questions are answered, up to the tank.
import { clear, el, id } from './dom.js';

export function showRiser(course, lesson) {
  const place = id('riser');
  const line = lesson && course.lessons.find((each) => each.id === lesson.id);
  if (!line || line.of === 0) {
    clear(place);
    return;
  }
  if (!place.firstChild) {
    place.append(
      el('div', { class: 'riser-tank' }),
      el('div', { class: 'riser-pipe' }, el('div', { class: 'riser-water' })),
      el('div', { class: 'riser-fire' }));
  }
  place.classList.toggle('full', line.done >= line.of);
  place.querySelector('.riser-water').style.height = `${Math.round((100 * line.done) / line.of)}%`;
  const pipe = place.querySelector('.riser-pipe');
  for (const mark of pipe.querySelectorAll('.riser-mark')) mark.remove();
  for (let n = 1; n < line.of; n += 1) {
    const mark = el('div', { class: 'riser-mark' });
    mark.style.bottom = `${(100 * n) / line.of}%`;
    pipe.append(mark);
  }
}
