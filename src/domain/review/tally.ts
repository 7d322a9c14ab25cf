import type { Offers } from './appetite.ts';
import type { Brood } from './broods.ts';
import type { Cycle } from './cycles.ts';

/** So many of so many. */
export interface Share {
  readonly hits: number;
  readonly of: number;
}

/** All that rates are made of, for any choice of cycles, clutches and offers. */
export interface Tally {
  readonly ovulatedOfPaired: Share;
  readonly laidOfPaired: Share;
  readonly laidOfOvulated: Share;
  readonly lockedOfVisits: Share;
  readonly goodOfEggs: Share;
  readonly slugsOfEggs: Share;
  readonly hatchedOfGood: Share;
  readonly hatchedOfEggs: Share;
  readonly deadOfGood: Share;
  readonly livedOfYoung: Share;
  readonly establishedOfYoung: Share;
  readonly malesOfYoung: Share;
  readonly refusedOfOffers: Share;
}
export type ShareName = keyof Tally;

export interface Counted {
  /** Those that are over. */
  readonly cycles: readonly Cycle[];
  readonly broods: readonly Brood[];
  readonly offers: Offers;
}

export function tallyOf({ cycles, broods, offers }: Counted): Tally {
  const paired = cycles.filter((cycle) => cycle.paired);
  const ovulated = cycles.filter((cycle) => cycle.ovulated);
  const visits = cycles.flatMap((cycle) => cycle.visits);
  const laid = broods.filter(({ counts }) => counts.laid !== undefined);
  // Eggs whose end nobody wrote down, or that went away, neither hatched nor failed.
  const told = laid.filter(({ isTold }) => isTold);
  const young = broods.flatMap((brood) => brood.young);
  const old = young.filter(({ isOld }) => isOld);
  const followed = old.filter(({ lived }) => lived !== undefined);
  const sexed = young.filter(({ sex }) => sex !== 'unknown');
  const eggs = sum(laid, ({ counts }) => counts.laid);
  const good = sum(told, ({ counts }) => counts.good);
  const hatched = sum(told, ({ counts }) => counts.out);
  return {
    ovulatedOfPaired: shareOf(paired, (cycle) => cycle.ovulated),
    laidOfPaired: shareOf(paired, (cycle) => cycle.laid),
    laidOfOvulated: shareOf(ovulated, (cycle) => cycle.laid),
    lockedOfVisits: shareOf(visits, (visit) => visit.locked),
    goodOfEggs: share(
      sum(laid, ({ counts }) => counts.good),
      eggs,
    ),
    slugsOfEggs: share(
      sum(laid, ({ counts }) => counts.slugs),
      eggs,
    ),
    hatchedOfGood: share(hatched, good),
    hatchedOfEggs: share(
      hatched,
      sum(told, ({ counts }) => counts.laid),
    ),
    deadOfGood: share(
      sum(told, ({ counts }) => counts.dead),
      good,
    ),
    livedOfYoung: shareOf(followed, ({ lived }) => lived === true),
    establishedOfYoung: shareOf(old, ({ established }) => established),
    malesOfYoung: shareOf(sexed, ({ sex }) => sex === 'male'),
    refusedOfOffers: share(offers.refused, offers.answered),
  };
}

const sum = <Each>(all: readonly Each[], of: (each: Each) => number | undefined): number =>
  all.reduce((total, each) => total + (of(each) ?? 0), 0);

/** Counts of two looks may contradict each other, as where an unsure egg hatches; a share may not. */
const share = (hits: number, of: number): Share => ({ hits: Math.min(hits, of), of });

const shareOf = <Each>(all: readonly Each[], is: (each: Each) => boolean): Share => ({
  hits: all.filter(is).length,
  of: all.length,
});
