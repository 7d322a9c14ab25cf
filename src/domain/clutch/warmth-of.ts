import { dayNumber, instantMs, type Day } from '../core/calendar.ts';
import type { IncubatorId } from '../core/ids.ts';
import { dailyWarmth, DAY_MIN, type Warmth } from '../incubation/daily-warmth.ts';
import { temperatureLine, type Point } from '../incubation/temperature-line.ts';
import type { Picture } from '../picture/picture.ts';
import { seriesOfIncubator } from '../room/series.ts';
import type { Clutch } from '../state/clutch.ts';
import type { Incubator, IncubatorSpot } from '../state/incubator.ts';
import type { Series } from '../state/readings.ts';

/** An incubator's temperatures, between the eggs and of its air. */
type Lines = Readonly<Record<IncubatorSpot, readonly Point[]>>;

/** Kept as long as the incubator stays as it is. */
const known = new WeakMap<Incubator, Lines>();

export const incubatorOf = (id: IncubatorId, { ledger }: Picture): Incubator | undefined =>
  ledger.subjects.get(id) as Incubator | undefined;

/** Every series of an incubator; only the last readings while history is still on its way. */
export function allSeries(
  incubator: Incubator,
  { ledger }: Picture,
): readonly Series<IncubatorSpot>[] {
  if (!ledger.hasHistory) return incubator.recent;
  return seriesOfIncubator(ledger.history(incubator.id).filter(({ id }) => ledger.stands(id)));
}

function linesOf(incubator: Incubator, picture: Picture): Lines {
  const before = known.get(incubator);
  if (before) return before;
  const series = allSeries(incubator, picture);
  const line = (spot: IncubatorSpot) => temperatureLine(series, spot, incubator.failures);
  const lines = { 'egg level': line('egg level'), air: line('air') };
  if (picture.ledger.hasHistory) known.set(incubator, lines);
  return lines;
}

/** The minute at which a room night begins. */
const nightStart = (night: Day, { facts }: Picture): number =>
  dayNumber(night) * DAY_MIN + facts.protocol.rolloverHour * 60 - facts.offsetMin;

/**
 * How warm the eggs of a clutch were, night by night: wherever its box stood, between the eggs where
 * that was read on that night, else by the air.
 */
export function warmthOf(
  clutch: Clutch,
  from: Day,
  days: number,
  picture: Picture,
): readonly Warmth[] {
  const start = nightStart(from, picture);
  const gapMin = picture.facts.protocol.incubatorGapHours * 60;
  const line = (spot: IncubatorSpot): Point[] =>
    clutch.stands.flatMap(({ incubator: id, at }, n) => {
      const incubator = incubatorOf(id, picture);
      const [since, until] = [minuteOf(at), minuteOf(clutch.stands[n + 1]?.at)];
      // Put in, it is as warm as what it was put into: the reading before counts from then on.
      return incubator
        ? linesOf(incubator, picture)[spot].filter(
            ({ minute }) => minute >= since - gapMin && minute < until,
          )
        : [];
    });
  const [eggs, air] = [line('egg level'), line('air')].map((each) =>
    dailyWarmth(each, start, days, gapMin),
  );
  return (eggs ?? []).map((warmth, day) => (warmth.knownMin > 0 ? warmth : (air?.[day] ?? warmth)));
}

const minuteOf = (at: Clutch['stands'][number]['at'] | undefined): number =>
  at === undefined ? Infinity : Math.floor(instantMs(at) / 60_000);
