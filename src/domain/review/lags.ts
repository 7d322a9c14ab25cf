import { daysBetween, type Day } from '../core/calendar.ts';
import { ownPips } from '../clutch/own-pips.ts';
import type { Picture } from '../picture/picture.ts';
import { lagChances } from '../windows/belief.ts';
import { convolve, onDay, window } from '../windows/day-chances.ts';
import { spreadOf as spreadOfLink, type LinkName } from '../windows/link.ts';
import type { OwnInterval } from '../windows/own-interval.ts';
import type { Lag } from './cycles.ts';
import type { SeasonChoice, SeasonsPast } from './seasons-past.ts';
import { spreadOf, type Spread } from './spread.ts';

/** Days within which four cases in five fall, and the likeliest. */
export interface DaysWindow {
  readonly from: number;
  readonly likely: number;
  readonly to: number;
}

/** How long one step took, and what is reckoned with. */
export interface LagFigure {
  readonly lag: Lag;
  readonly own: readonly OwnInterval[];
  /** Of the middles, where a step is known only between two looks. Unit: days. */
  readonly spread?: Spread | undefined;
  /** How many are known only between two looks. */
  readonly loose: number;
  /** By the protocol, before own cycles are counted; none for a step of two. */
  readonly usual?: DaysWindow | undefined;
  /** By all own cycles, whatever season is looked at, and how many those are. */
  readonly learnt?: (DaysWindow & { readonly cycles: number }) | undefined;
}

const links: Readonly<Record<Lag, LinkName | undefined>> = {
  'ovulation to shed': 'ovulation to shed',
  'shed to lay': 'shed to lay',
  'ovulation to lay': undefined,
  'lay to pip': 'lay to pip',
};

export function lagFigures(
  past: SeasonsPast,
  season: SeasonChoice,
  picture: Picture,
): readonly LagFigure[] {
  const isIn = (each: { readonly season: string }) =>
    season === undefined || each.season === season;
  const cycles = [...past.cycles, ...past.underWay].filter(isIn).flatMap(({ lags }) => lags);
  const pips = past.broods.filter(isIn).flatMap(({ pip }) => pip ?? []);
  return (Object.keys(links) as Lag[]).map((lag) => {
    const own =
      lag === 'lay to pip'
        ? pips
        : cycles.flatMap(([each, interval]) => (each === lag ? [interval] : []));
    const link = links[lag];
    return {
      lag,
      own,
      spread: spreadOf(own.map(({ earliestDays, latestDays }) => (earliestDays + latestDays) / 2)),
      loose: own.filter(({ earliestDays, latestDays }) => earliestDays < latestDays).length,
      ...(link && reckonedWith(link, picture)),
    };
  });
}

const SOME_DAY = '2000-01-01' as Day;

function reckonedWith(link: LinkName, picture: Picture): Pick<LagFigure, 'usual' | 'learnt'> {
  const { protocol } = picture.facts;
  const { early, likely, late } = spreadOfLink(link, protocol);
  const own =
    link === 'lay to pip' ? ownPips(picture) : (picture.experience().intervals[link] ?? NONE);
  const { chances, ownCycles } = lagChances(link, protocol, own);
  const days = window(convolve(onDay(SOME_DAY), chances));
  return {
    usual: { from: early, likely, to: late },
    learnt: {
      from: daysBetween(SOME_DAY, days.from),
      likely: daysBetween(SOME_DAY, days.likely),
      to: daysBetween(SOME_DAY, days.to),
      cycles: ownCycles,
    },
  };
}

/** The same array, so that what is believed of it is kept. */
const NONE: readonly OwnInterval[] = [];
