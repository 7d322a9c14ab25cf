import { addDays, dayNumber, monthOf, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { seasonOutlook } from '../clutch/season-outlook.ts';
import type { Picture } from '../picture/picture.ts';
import { largestMm } from '../season/sizes.ts';
import { signStatistics } from '../season/sign-statistics.ts';
import { spanOf } from '../season/span.ts';
import type { SeasonNow, Stage, Standing, StageFacts } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { signLine, type SignLine } from './sign-words.ts';
import { inWalkingOrder } from './tonight-view.ts';
import { comingWindow, type ComingWindow } from './window-words.ts';

/** Something that happened. `at` is in whole days from the left end of the axis. */
export interface LaneMark {
  readonly kind: 'scan' | 'felt' | 'none seen' | 'lock' | 'ovulation' | 'pre-lay shed' | 'eggs';
  readonly night: Day;
  readonly at: number;
  /** The first night that it may have been, where that is not known to the day. */
  readonly from: number;
  readonly mm?: number | undefined;
}

/** A coming window, also in days from the left end of the axis; `toAt` is the end of its last day. */
export interface LaneWindow extends ComingWindow {
  readonly fromAt: number;
  readonly likelyAt: number;
  readonly toAt: number;
}

/** One female whose season is under way. */
export interface Lane {
  readonly id: AnimalId;
  readonly name: string;
  readonly position: string;
  /** Her place in the keeper's walk, for the other order. */
  readonly walk: number;
  readonly stage: Stage;
  readonly since?: Day | undefined;
  readonly questions: number;
  readonly marks: readonly LaneMark[];
  readonly stays: readonly { readonly from: number; readonly to: number }[];
  /** The nearest first. */
  readonly windows: readonly LaneWindow[];
}

/** A female with nothing to draw. */
export interface QuietFemale {
  readonly id: AnimalId;
  readonly name: string;
  readonly position: string;
  readonly stage: Stage;
}

/** The season at a glance: one time axis for all females. */
export interface LanesView {
  readonly night: Day;
  /** The left end, the first of a month. */
  readonly from: Day;
  /** Whole days of the axis. */
  readonly days: number;
  readonly tonightAt: number;
  readonly months: readonly {
    readonly at: number;
    readonly month: number;
    readonly year: number;
  }[];
  /** Whose next event is nearest first. */
  readonly lanes: readonly Lane[];
  readonly quiet: readonly QuietFemale[];
  readonly signs: readonly SignLine[];
  /** Cycles with an ovulation on record, which the signs are counted in. */
  readonly cycles: number;
}

/** Older marks are left off. */
const BACK_DAYS = 183;
/** The axis always reaches some way ahead. */
const AHEAD_DAYS = 60;

export function lanesView(picture: Picture): LanesView {
  const { night } = picture.facts;
  const females = inWalkingOrder(
    picture.living().filter(({ sex }) => sex === 'female'),
    picture,
  ).flatMap((animal) => {
    const standing = picture.standing(animal);
    return standing ? [{ animal, standing, season: eventsOf(animal, standing, picture) }] : [];
  });
  const drawn = females.flatMap(({ season }) => season ?? []);
  const oldest = addDays(night, -BACK_DAYS);
  const marked = drawn
    .flatMap(({ marks }) => marks.map((mark) => mark.night))
    .filter((day) => day >= oldest);
  const coming = drawn.flatMap(({ windows }) => windows);
  const from = monthStart([...marked, ...coming.map((each) => each.from)].reduce(earlier, night));
  const last = coming.map(({ to }) => to).reduce(later, addDays(night, AHEAD_DAYS));
  const start = dayNumber(from);
  const at = (day: Day): number => dayNumber(day) - start;
  const days = at(nextMonth(last));

  const lanes = females.flatMap(({ animal, standing, season }, walk): readonly Lane[] =>
    season
      ? [
          {
            ...whoIs(animal, standing, picture),
            walk,
            since: standing.since,
            questions: standing.conflicts.length,
            marks: season.marks
              .filter((mark) => mark.night >= from)
              .map((mark) => ({ ...mark, at: at(mark.night), from: Math.max(0, at(mark.first)) })),
            stays: season.stays
              .filter((stay) => stay.to >= from)
              .map((stay) => ({ from: Math.max(0, at(stay.from)), to: at(stay.to) })),
            windows: season.windows.map((each) => ({
              ...each,
              fromAt: at(each.from),
              likelyAt: at(each.likely),
              toAt: at(each.to) + 1,
            })),
          },
        ]
      : [],
  );
  const { leads, cycles } = picture.experience();
  return {
    night,
    from,
    days,
    tonightAt: at(night),
    months: monthsFrom(from, nextMonth(last), at),
    lanes: lanes.toSorted(byNextEvent),
    quiet: females
      .filter(({ season }) => !season)
      .map(({ animal, standing }) => whoIs(animal, standing, picture)),
    signs: signStatistics({ leads, cycles }).map(signLine),
    cycles,
  };
}

const whoIs = (animal: Animal, { stage }: Standing, picture: Picture): QuietFemale => ({
  id: animal.id,
  name: animal.name || 'Unnamed',
  position: picture.position(picture.whereIs(animal)) ?? '–',
  stage,
});

interface SeasonEvents {
  readonly marks: readonly (Omit<LaneMark, 'at' | 'from'> & { readonly first: Day })[];
  readonly stays: readonly { readonly from: Day; readonly to: Day }[];
  readonly windows: readonly ComingWindow[];
}

/** Undefined for a female who only grows or rests, or recovers from an earlier season. */
function eventsOf(animal: Animal, standing: Standing, picture: Picture): SeasonEvents | undefined {
  const { now, stage } = standing;
  if (!now || stage === 'growing' || stage === 'resting') return undefined;
  if (stage === 'recovering' && !now.season.laid) return undefined;
  const { facts } = picture;
  const { night, nightOf } = facts;
  return {
    marks: marksOf(now, facts),
    stays: now.season.stays.map(({ since, until }) => ({
      from: nightOf(since),
      to: until === undefined ? night : nightOf(until),
    })),
    windows: seasonOutlook(picture, animal).forecasts.map((forecast) =>
      comingWindow(forecast, night),
    ),
  };
}

function marksOf(
  { season, ovulation, preLay }: SeasonNow,
  facts: StageFacts,
): SeasonEvents['marks'] {
  const { nightOf, protocol } = facts;
  const scans = season.scans.map((scan) => {
    const mm = largestMm(scan, protocol);
    const found = scan.found.method === 'palpation' ? ('felt' as const) : ('scan' as const);
    const night = nightOf(scan.at);
    return { kind: mm === undefined ? ('none seen' as const) : found, night, first: night, mm };
  });
  const locks = season.locks.map(({ at }) => ({
    kind: 'lock' as const,
    night: nightOf(at),
    first: nightOf(at),
  }));
  const events: SeasonEvents['marks'][number][] = [];
  // One that only the shed tells of has no day of its own.
  if (ovulation && ovulation.how !== 'from the shed') {
    events.push({ kind: 'ovulation', night: ovulation.last, first: ovulation.first });
  }
  if (preLay) {
    const { first, last } = spanOf(preLay.shed, nightOf);
    events.push({ kind: 'pre-lay shed', night: last, first });
  }
  if (season.laid) {
    const { first, last } = spanOf(season.laid, nightOf);
    events.push({ kind: 'eggs', night: last, first });
  }
  return [...scans, ...locks, ...events];
}

/** By the likeliest day of what comes next; where nothing is forecast, in walking order behind them. */
function byNextEvent(a: Lane, b: Lane): number {
  const [left, right] = [a.windows[0], b.windows[0]];
  if (left && right && left.likelyAt !== right.likelyAt) return left.likelyAt - right.likelyAt;
  return Number(!left) - Number(!right) || a.walk - b.walk;
}

const earlier = (a: Day, b: Day): Day => (b < a ? b : a);
const later = (a: Day, b: Day): Day => (b > a ? b : a);

const monthStart = (day: Day): Day => `${day.slice(0, 7)}-01` as Day;
const nextMonth = (day: Day): Day => monthStart(addDays(monthStart(day), 31));

function monthsFrom(from: Day, end: Day, at: (day: Day) => number): LanesView['months'] {
  const months: LanesView['months'][number][] = [];
  for (let day = from; day < end; day = nextMonth(day)) {
    months.push({ at: at(day), month: monthOf(day), year: Number(day.slice(0, 4)) });
  }
  return months;
}
