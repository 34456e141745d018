// What runs now, so that Esc stops it from wherever the focus is.
const stops = new Set();

/** Takes note of something that runs, and how it is stopped; gives back what says that it has ended. */
export function running(stop) {
  stops.add(stop);
  return () => stops.delete(stop);
}

document.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape' || !stops.size || document.querySelector('dialog[open]')) return;
  for (const stop of [...stops]) stop();
});
