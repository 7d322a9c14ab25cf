import type { Clutch } from '../state/clutch.ts';

/** How many eggs there were, are and are no more; undefined where nobody counted. */
export interface EggCounts {
  readonly laid?: number | undefined;
  /** Good when laid. */
  readonly good?: number | undefined;
  readonly slugs: number;
  readonly dead: number;
  /** Still in the shell and not given up. */
  readonly inShell?: number | undefined;
  /** Slit by themselves or by the keeper, those out of it included. */
  readonly pipped: number;
  readonly cut: number;
  readonly out: number;
}

type Each = 'good' | 'unsure' | 'slug' | 'dead';

/** The eggs that were told apart by letter, as each was last judged. */
export function eggByEgg(clutch: Clutch): ReadonlyMap<string, Each> {
  return new Map(
    clutch.checks.flatMap(({ each = [] }) => each.map(({ egg, is }) => [egg, is] as const)),
  );
}

const sum = (numbers: readonly (number | undefined)[]): number =>
  numbers.reduce<number>((total, each) => total + (each ?? 0), 0);

/** Counted from all records together: counts alone are enough, and letters are where they were given. */
export function eggCounts(clutch: Clutch): EggCounts {
  const { laid, checks, hatching, hatched, counted } = clutch;
  const lettered = [...eggByEgg(clutch).values()];
  const ofLetters = (is: Each): number => lettered.filter((each) => each === is).length;
  const good = laid?.good;
  const slugs = (laid?.slugs ?? 0) + sum(checks.map((check) => check.slugs));
  const dead = Math.max(sum(checks.map((check) => check.dead)), ofLetters('dead'));
  const newly = (seen: string): number =>
    sum(hatching.filter((each) => each.seen === seen).map(({ eggs = 1 }) => eggs));
  const named = hatched.length + sum((counted?.counts ?? []).map(({ count }) => count));
  const out = Math.max(newly('out'), named);
  const pipped = Math.max(newly('pip') + newly('cut'), out);
  const last = checks.findLast((check) => check.good !== undefined);
  const since = last === undefined ? checks : checks.slice(checks.indexOf(last) + 1);
  const lost = sum(since.flatMap((check) => [check.dead, check.slugs]));
  const alive =
    last !== undefined
      ? sum([last.good, last.unsure])
      : lettered.length > 0
        ? ofLetters('good') + ofLetters('unsure')
        : good === undefined
          ? undefined
          : good + (laid?.unsure ?? 0);
  return {
    laid: laid && laid.good !== undefined ? sum([laid.good, laid.slugs, laid.unsure]) : undefined,
    good,
    slugs,
    dead,
    // What is out was alive at the last count, if that was before it.
    inShell: alive === undefined ? undefined : Math.max(0, alive - lost - out),
    pipped,
    cut: newly('cut'),
    out,
  };
}
