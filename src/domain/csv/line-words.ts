/** @example lineWords([7, 3, 4, 5]) //=> '3–5, 7' */
export function lineWords(lines: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const line of lines.toSorted((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run && line <= run.to + 1) run.to = line;
    else runs.push({ from: line, to: line });
  }
  return runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
}
