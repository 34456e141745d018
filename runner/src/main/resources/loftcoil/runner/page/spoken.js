// What came of a run, in the words a screen reader is given: said once, the gravest first, and not too long to listen to.
const MOST_LINES = 4;

export function spokenRun(run) {
  const problems = run.problems.map((problem) => `Line ${problem.line}: ${problem.words}`);
  const lines = run.printed.trim().split('\n').filter(Boolean);
  const printed = lines.slice(0, MOST_LINES);
  if (lines.length > MOST_LINES) printed.push(`and ${lines.length - MOST_LINES} lines more.`);
  const value = run.value ? [`Value ${run.value}.`] : [];
  const charts = run.charts.map((chart) => chart.says);
  const words = [run.words, ...problems, ...printed, ...value, ...charts, ...run.predictions].filter(Boolean);
  return words.length ? words.join(' ') : 'Done. It printed nothing and has no value.';
}
