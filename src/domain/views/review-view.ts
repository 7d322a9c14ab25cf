import type { AnimalId, IncubatorId } from '../core/ids.ts';
import { wilsonInterval, type ShareInterval } from '../core/wilson.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import type { Picture } from '../picture/picture.ts';
import { lagFigures, type LagFigure } from '../review/lags.ts';
import {
  bredPairs,
  FEWEST_YOUNG,
  outcomesOf,
  type BredPair,
  type LocusOutcome,
} from '../review/outcomes.ts';
import {
  byFemale,
  byIncubator,
  byMale,
  countedIn,
  monthsIn,
  seasonsPast,
  type CountedBy,
} from '../review/seasons-past.ts';
import { spreadOf, type Spread } from '../review/spread.ts';
import { tallyOf, type Counted, type Share, type ShareName, type Tally } from '../review/tally.ts';
import { incubatorsIn } from '../clutch/clutches-in.ts';
import type { SpreadName } from './review-words.ts';

/** Empty: all seasons. */
export type ReviewAsk = string;

export interface RateFigure {
  readonly name: ShareName;
  readonly hits: number;
  readonly of: number;
  /** 95 %. */
  readonly interval: ShareInterval;
}

export interface SpreadFigure extends Spread {
  readonly name: SpreadName;
}

/** One female, male, incubator or season, by the same shares. */
export interface ReviewLine {
  readonly id: string;
  readonly name: string;
  readonly rates: Readonly<Record<LineShare, RateFigure>>;
  readonly clutches: number;
}

/** What lines of a table are compared by. */
export const lineShares = [
  'laidOfPaired',
  'lockedOfVisits',
  'goodOfEggs',
  'slugsOfEggs',
  'hatchedOfGood',
  'refusedOfOffers',
] as const satisfies readonly ShareName[];
export type LineShare = (typeof lineShares)[number];

export interface PairLine extends BredPair {
  readonly damName: string;
  readonly sireName: string;
}

export interface ReviewView {
  readonly isWhole: boolean;
  /** The newest first. */
  readonly seasons: readonly string[];
  /** Empty: all. */
  readonly season: string;
  /** Paired and neither over nor with eggs: counted in no share. */
  readonly underWay: number;
  readonly rates: Readonly<Record<ShareName, RateFigure>>;
  readonly spreads: readonly SpreadFigure[];
  readonly lags: readonly LagFigure[];
  /** Oldest first. */
  readonly bySeason: readonly ReviewLine[];
  readonly females: readonly ReviewLine[];
  readonly males: readonly ReviewLine[];
  readonly incubators: readonly ReviewLine[];
  /** Refusals of January to December. */
  readonly months: readonly RateFigure[];
  /** With enough young to hold the odds against, over all seasons, whatever season is looked at. */
  readonly pairs: readonly PairLine[];
  /** Pairs with too few, and how many would be enough. */
  readonly silentPairs: number;
  readonly fewestYoung: number;
}

/** What worked: every share with what it is of, and how sure so few cases can be. */
export function reviewView(asked: ReviewAsk, picture: Picture): ReviewView {
  const past = seasonsPast(picture);
  const season = past.seasons.includes(asked) ? asked : undefined;
  const all = countedIn(past, season);
  const tally = tallyOf(all);
  const { nameOf } = picture.facts;
  return {
    isWhole: picture.ledger.hasHistory,
    seasons: past.seasons,
    season: season ?? '',
    underWay: past.underWay.filter(
      (cycle) => cycle.paired && (season === undefined || cycle.season === season),
    ).length,
    rates: ratesOf(Object.keys(tally) as ShareName[], tally),
    spreads: spreadsOf(all),
    lags: lagFigures(past, season, picture),
    bySeason: past.seasons
      .toReversed()
      .map((each) => lineOf(each, each, countedIn(past, each)))
      .filter(({ rates, clutches }) => clutches > 0 || rates.laidOfPaired.of > 0),
    females: linesOf(byFemale(all, past, season), nameOf),
    males: linesOf(byMale(all, past, season), nameOf),
    incubators: linesOf(byIncubator(all), incubatorNames(picture)),
    months: monthsIn(past.parts.values(), season).map(({ refused, answered }) =>
      rateOf('refusedOfOffers', { hits: refused, of: answered }),
    ),
    ...pairsOf(picture),
    fewestYoung: FEWEST_YOUNG,
  };
}

const rateOf = <Name extends ShareName>(name: Name, { hits, of }: Share): RateFigure => ({
  name,
  hits,
  of,
  interval: wilsonInterval(hits, of),
});

const ratesOf = <Name extends ShareName>(names: readonly Name[], tally: Tally) =>
  // Every name is given a rate.
  Object.fromEntries(names.map((name) => [name, rateOf(name, tally[name])])) as Record<
    Name,
    RateFigure
  >;

const percent = (share: number | undefined) => (share === undefined ? [] : [100 * share]);

function spreadsOf({ cycles, broods }: Counted): readonly SpreadFigure[] {
  const counted = broods.filter(({ counts }) => counts.laid !== undefined);
  const paired = cycles.filter(({ laid, visits }) => laid && visits.length > 0);
  const numbers: Readonly<Record<SpreadName, readonly number[]>> = {
    eggs: counted.map(({ counts }) => counts.laid ?? 0),
    good: counted.map(({ counts }) => counts.good ?? 0),
    visits: paired.map(({ visits }) => visits.length),
    beforeShare: broods.flatMap((each) => percent(each.beforeShare)),
    afterShare: broods.flatMap((each) => percent(each.afterShare)),
    lostShare: broods.flatMap((each) => percent(each.lostShare)),
  };
  return (Object.keys(numbers) as SpreadName[]).flatMap((name) => {
    const spread = spreadOf(numbers[name]);
    return spread ? [{ name, ...spread }] : [];
  });
}

const lineOf = (id: string, name: string, counted: Counted): ReviewLine => ({
  id,
  name,
  rates: ratesOf(lineShares, tallyOf(counted)),
  clutches: counted.broods.length,
});

/** Those that bred, by name. */
function linesOf<Id extends string>(
  counted: CountedBy<Id>,
  nameOf: (id: Id) => string,
): readonly ReviewLine[] {
  return [...counted]
    .map(([id, each]) => lineOf(id, nameOf(id), each))
    .toSorted((a, b) => (a.name < b.name ? -1 : Number(a.name > b.name)));
}

function incubatorNames(picture: Picture): (id: IncubatorId) => string {
  const names = new Map(incubatorsIn(picture).map(({ id, name }) => [id, name] as const));
  return (id) => names.get(id) || 'Incubator';
}

function pairsOf(picture: Picture): Pick<ReviewView, 'pairs' | 'silentPairs'> {
  const { nameOf } = picture.facts;
  const all = bredPairs(picture.animals(), genesBook(picture));
  const speaking = all.filter(({ young }) => young >= FEWEST_YOUNG);
  return {
    pairs: speaking.map((pair) => ({
      ...pair,
      damName: nameOf(pair.dam),
      sireName: nameOf(pair.sire),
    })),
    silentPairs: all.length - speaking.length,
  };
}

/** What hatched of a pair beside the odds, gene by gene. */
export interface OutcomesView {
  readonly genes: readonly LocusOutcome[];
}

export const outcomesView = (
  pair: { readonly dam: AnimalId; readonly sire: AnimalId },
  picture: Picture,
): OutcomesView => ({ genes: outcomesOf(pair, picture.animals(), genesBook(picture)) });
