import { addDays } from '../src/domain/core/calendar.ts';
import { scanErrors, type Scan, type ScanErrors } from '../src/domain/follicles/error.ts';
import { readingsOf, type Reading } from '../src/domain/follicles/reading.ts';
import { suggestResorbing } from '../src/domain/follicles/resorbing.ts';
import { follicleTrend } from '../src/domain/follicles/trend.ts';
import { defaultProtocol, type Protocol } from '../src/domain/protocol/values.ts';
import { window } from '../src/domain/windows/day-chances.ts';
import { dayOf, nightOf, type Female, type GrowingFemale } from './follicle-females.ts';

// How often what is said of invented females comes true.

const RIPE_MM = 35;
const FOUR_WEEKS = 28;

/** So many of so many. */
export interface Share {
  hits: number;
  of: number;
}

export const shareOf = ({ hits, of }: Share): number => hits / of;

const count = (share: Share, hit: boolean): void => {
  share.hits += hit ? 1 : 0;
  share.of += 1;
};

const none = (): Share => ({ hits: 0, of: 0 });

/** The readings as they stood after each scan. */
const asTheyCame = (
  { scans }: Female,
  errors: ScanErrors,
  protocol: Protocol,
): readonly (readonly Reading[])[] => {
  const readings = readingsOf(scans, errors, protocol);
  return readings.map((_, i) => readings.slice(0, i + 1));
};

export interface GrowthTrial {
  /** 80 % intervals that held the true growth of that day, and the true size. */
  readonly growth: Share;
  readonly size: Share;
  /** Of the trends not yet at 35 mm, those that said when. */
  readonly said: Share;
  /** 80 % windows that held the true day of reaching 35 mm, of all and by the number of scans used. */
  readonly ripe: Share;
  readonly ripeByScans: ReadonlyMap<number, Share>;
  /** Days in each window, both ends counted. */
  readonly ripeDays: readonly number[];
}

/** Asks after every scan how fast she grows, and when she is at 35 mm if neither she nor a scan is. */
export function growthTrial(
  females: Iterable<GrowingFemale>,
  learnt: Iterable<readonly Scan[]> = [],
  protocol: Protocol = defaultProtocol,
): GrowthTrial {
  const errors = scanErrors(learnt, protocol);
  const ripeByScans = new Map<number, Share>();
  const ripeDays: number[] = [];
  const trial = { growth: none(), size: none(), said: none(), ripe: none(), ripeByScans, ripeDays };
  for (const female of females) {
    for (const readings of asTheyCame(female, errors, protocol)) {
      const trend = follicleTrend(readings, protocol);
      const last = readings.at(-1);
      if (!trend || last?.kind !== 'size') continue;
      const day = dayOf(last.night);
      const trueMm = female.trueMm(day);
      const weekly = 7 * (trueMm - female.trueMm(day - 1));
      const size = trend.on(last.night);
      count(trial.growth, trend.low <= weekly && weekly <= trend.high);
      count(trial.size, size.low <= trueMm && trueMm <= size.high);
      if (trueMm >= RIPE_MM || last.mm >= RIPE_MM) continue;
      const when = trend.reaches(RIPE_MM, last.night);
      count(trial.said, when !== undefined);
      if (!when) continue;
      const { from, to } = window(when);
      const ripeOn = nightOf(Math.ceil(female.reachesOn(RIPE_MM)));
      const used = trend.readings.length;
      const sameScans = ripeByScans.get(used) ?? none();
      ripeByScans.set(used, sameScans);
      for (const share of [trial.ripe, sameScans]) count(share, from <= ripeOn && ripeOn <= to);
      ripeDays.push(dayOf(to) - dayOf(from) + 1);
    }
  }
  return trial;
}

export interface ResorbingTrial {
  /** Females of whom it was suggested at any time. */
  readonly ever: Share;
  /** Not later than four weeks after the second scan that followed her true peak. */
  readonly inTime: Share;
}

const isSuggested = (readings: readonly Reading[]): boolean =>
  suggestResorbing(readings, defaultProtocol) !== undefined;

/** The share of females of whom resorbing was suggested at any time of the season. */
export function suggested(females: Iterable<Female>): Share {
  const errors = scanErrors([], defaultProtocol);
  const share = none();
  for (const female of females) {
    count(share, asTheyCame(female, errors, defaultProtocol).some(isSuggested));
  }
  return share;
}

/** Females who truly resorb from the day of their peak on. */
export function resorbingTrial(
  females: Iterable<Female & { readonly peakDay: number }>,
): ResorbingTrial {
  const errors = scanErrors([], defaultProtocol);
  const trial = { ever: none(), inTime: none() };
  for (const female of females) {
    const all = asTheyCame(female, errors, defaultProtocol);
    const peakNight = nightOf(Math.floor(female.peakDay));
    const nights = all.flatMap((readings) => readings.at(-1)?.night ?? []);
    const [, second] = nights.filter((night) => night > peakNight);
    const found = all.find(isSuggested)?.at(-1)?.night;
    if (second === undefined) continue;
    count(trial.ever, found !== undefined);
    count(trial.inTime, found !== undefined && found <= addDays(second, FOUR_WEEKS));
  }
  return trial;
}
