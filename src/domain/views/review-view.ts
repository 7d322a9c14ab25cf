import type { AnimalId, IncubatorId } from '../core/ids.ts';
import { wilsonInterval, type ShareInterval } from '../core/wilson.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import type { Picture } from '../picture/picture.ts';
import { add, monthKey, type Offers } from '../review/appetite.ts';
import { lagFigures, type LagFigure } from '../review/lags.ts';
import { bredPairs, FEWEST_YOUNG, outcomesOf, type LocusOutcome } from '../review/outcomes.ts';
import {
  countedIn,
  offersIn,
  ofFemale,
  ofIncubator,
  ofMale,
  seasonsPast,
  type SeasonsPast,
} from '../review/seasons-past.ts';
import { spreadOf, type Spread } from '../review/spread.ts';
import { tallyOf, type Counted, type ShareName, type Tally } from '../review/tally.ts';
import { incubatorsIn } from './hatchery-view.ts';
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
  readonly rates: Readonly<Record<ShareName, RateFigure>>;
  readonly clutches: number;
}

export interface PairLine {
  readonly dam: AnimalId;
  readonly sire: AnimalId;
  readonly damName: string;
  readonly sireName: string;
  readonly young: number;
  /** Enough young for the odds to be held against. */
  readonly speaks: boolean;
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
  /** Over all seasons, whatever season is looked at. */
  readonly pairs: readonly PairLine[];
  readonly fewestYoung: number;
}

const FORMS: readonly ShareName[] = [
  'ovulatedOfPaired',
  'laidOfPaired',
  'laidOfOvulated',
  'lockedOfVisits',
  'goodOfEggs',
  'slugsOfEggs',
  'hatchedOfGood',
  'hatchedOfEggs',
  'deadOfGood',
  'livedOfYoung',
  'establishedOfYoung',
  'malesOfYoung',
  'refusedOfOffers',
];

/** What worked: every share with what it is of, and how sure so few cases can be. */
export function reviewView(asked: ReviewAsk, picture: Picture): ReviewView {
  const past = seasonsPast(picture);
  const season = past.seasons.includes(asked) ? asked : undefined;
  const all = countedIn(past, season);
  return {
    isWhole: picture.ledger.hasHistory,
    seasons: past.seasons,
    season: season ?? '',
    underWay: past.underWay.filter(
      (cycle) => cycle.paired && (season === undefined || cycle.season === season),
    ).length,
    rates: ratesOf(tallyOf(all)),
    spreads: spreadsOf(all),
    lags: lagFigures(past, season, picture),
    bySeason: past.seasons
      .toReversed()
      .map((each) => lineOf(each, each, countedIn(past, each)))
      .filter(({ rates, clutches }) => clutches > 0 || rates.laidOfPaired.of > 0),
    ...linesOf(past, all, season, picture),
    months: monthsOf(past, season),
    pairs: pairsOf(picture),
    fewestYoung: FEWEST_YOUNG,
  };
}

const rateOf = (name: ShareName, hits: number, of: number): RateFigure => ({
  name,
  hits,
  of,
  interval: wilsonInterval(hits, of),
});

const ratesOf = (tally: Tally): ReviewView['rates'] =>
  Object.fromEntries(
    FORMS.map((name) => [name, rateOf(name, tally[name].hits, tally[name].of)]),
    // Every name is among the forms.
  ) as Record<ShareName, RateFigure>;

function spreadsOf({ cycles, broods }: Counted): readonly SpreadFigure[] {
  const counted = broods.filter(({ counts }) => counts.laid !== undefined);
  const paired = cycles.filter(({ laid, visits }) => laid && visits.length > 0);
  const percent = (share: number | undefined) => (share === undefined ? [] : [100 * share]);
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
  rates: ratesOf(tallyOf(counted)),
  clutches: counted.broods.length,
});

/** Those that bred, by name. */
function linesOf(
  past: SeasonsPast,
  all: Counted,
  season: string | undefined,
  picture: Picture,
): Pick<ReviewView, 'females' | 'males' | 'incubators'> {
  const { nameOf } = picture.facts;
  const named = (lines: readonly ReviewLine[]) =>
    lines.toSorted((a, b) => (a.name < b.name ? -1 : Number(a.name > b.name)));
  const offersOf = (id: AnimalId): Offers => {
    const part = past.parts.get(id);
    return part ? offersIn(part.appetite, season) : { answered: 0, refused: 0 };
  };
  const females = new Set([
    ...all.cycles.filter(({ paired, laid }) => paired || laid).map(({ female }) => female),
    ...all.broods.map(({ dam }) => dam),
  ]);
  const males = new Set(all.cycles.flatMap(({ visits }) => visits.map(({ male }) => male)));
  const incubators = new Map(incubatorsIn(picture).map(({ id, name }) => [id, name] as const));
  const used = new Set(all.broods.flatMap(({ incubator }) => incubator ?? []));
  return {
    females: named(
      [...females].map((id) => lineOf(id, nameOf(id), ofFemale(all, id, offersOf(id)))),
    ),
    males: named([...males].map((id) => lineOf(id, nameOf(id), ofMale(all, id, offersOf(id))))),
    incubators: named(
      [...used].map((id: IncubatorId) =>
        lineOf(id, incubators.get(id) || 'Incubator', ofIncubator(all, id)),
      ),
    ),
  };
}

function monthsOf({ parts, seasons }: SeasonsPast, season: string | undefined): RateFigure[] {
  const chosen = season === undefined ? seasons : [season];
  return Array.from({ length: 12 }, (_, n) => {
    let offers: Offers = { answered: 0, refused: 0 };
    for (const { appetite } of parts.values()) {
      for (const each of chosen) {
        const of = appetite.byMonth.get(monthKey(each, n + 1));
        if (of) offers = add(offers, of);
      }
    }
    return rateOf('refusedOfOffers', offers.refused, offers.answered);
  });
}

function pairsOf(picture: Picture): readonly PairLine[] {
  const { nameOf } = picture.facts;
  return bredPairs(picture.animals(), genesBook(picture)).map(({ dam, sire, young }) => ({
    dam,
    sire,
    damName: nameOf(dam),
    sireName: nameOf(sire),
    young,
    speaks: young >= FEWEST_YOUNG,
  }));
}

/** What hatched of a pair beside the odds, gene by gene. */
export interface OutcomesView {
  readonly genes: readonly LocusOutcome[];
}

export const outcomesView = (
  pair: { readonly dam: AnimalId; readonly sire: AnimalId },
  picture: Picture,
): OutcomesView => ({ genes: outcomesOf(pair, picture.animals(), genesBook(picture)) });
