import type { Dictionary } from './trait-dictionary.ts';

/** Letters to change, add, leave out or swap, at most, for a name to be near: one in three. */
const allowed = (name: string): number => Math.max(1, Math.floor(name.length / 3));

/** Known names nearest to what was written, or that begin with it; the nearest first, three at most. */
export function nearestNames(written: string, { names }: Dictionary): readonly string[] {
  if (written.length > 40) return [];
  return [...names]
    .flatMap(([sound, name]) => {
      if (written.length >= 3 && sound.startsWith(`${written} `)) return [{ name, far: 0.5 }];
      if (Math.abs(sound.length - written.length) > allowed(sound)) return [];
      const far = editDistance(written, sound);
      return far <= allowed(sound) ? [{ name, far }] : [];
    })
    .toSorted((a, b) => a.far - b.far)
    .slice(0, 3)
    .map(({ name }) => name);
}

/** Optimal string alignment: insertions, deletions, substitutions and swaps of neighbours. */
export function editDistance(a: string, b: string): number {
  let [older, row]: [readonly number[], readonly number[]] = [
    [],
    Array.from({ length: b.length + 1 }, (_, n) => n),
  ];
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const differ = a[i - 1] === b[j - 1] ? 0 : 1;
      const swap =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
          ? (older[j - 2] ?? 0) + 1
          : Infinity;
      next[j] = Math.min(
        (row[j] ?? 0) + 1,
        (next[j - 1] ?? 0) + 1,
        (row[j - 1] ?? 0) + differ,
        swap,
      );
    }
    [older, row] = [row, next];
  }
  return row[b.length] ?? 0;
}
