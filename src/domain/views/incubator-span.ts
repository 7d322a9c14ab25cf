import { dayOfNumber } from '../core/calendar.ts';
import type { IncubatorId } from '../core/ids.ts';
import { allSeries } from '../clutch/warmth-of.ts';
import type { Picture } from '../picture/picture.ts';
import type { BandAt } from '../room/band.ts';
import { madeBy } from '../room/words.ts';
import type { Incubator, IncubatorSpot } from '../state/incubator.ts';
import { spanView, type SpanView } from './room-span.ts';

/** An incubator over a span: how many days, and how many such spans back. */
export type IncubatorSpanAsk = `${IncubatorId}/${number}/${number}`;

const DAY_MIN = 1_440;

export const spotWords: Readonly<Record<IncubatorSpot, string>> = {
  'egg level': 'Between the eggs',
  air: 'Air',
};

/** The limits between eggs, the same at any hour; a stretch a day, so that figures fall into days. */
export function eggBand(incubator: Incubator, { facts: { protocol } }: Picture): BandAt {
  const targetC = incubator.targetC ?? protocol.incubatorTargetC;
  return (localMin) => {
    const day = Math.floor(localMin / DAY_MIN);
    return {
      fromMin: day * DAY_MIN,
      toMin: (day + 1) * DAY_MIN,
      part: 'day',
      date: dayOfNumber(day),
      settles: false,
      targetC,
      lowC: protocol.eggLowC,
      highC: protocol.eggHighC,
    };
  };
}

/** Its readings as curves against the limits of eggs: between the eggs and of the air, apart. */
export function incubatorSpan(ask: IncubatorSpanAsk, picture: Picture): SpanView | undefined {
  const [id = '', days = '7', back = '0'] = ask.split('/');
  const incubator = picture.ledger.subjects.get(id as IncubatorId) as Incubator | undefined;
  if (!incubator) return undefined;
  const { protocol } = picture.facts;
  const bandAt = eggBand(incubator, picture);
  const span = spanView(
    allSeries(incubator, picture),
    (measured) => `${spotWords[measured.spot]} · ${madeBy(measured)}`,
    { days: Number(days), back: Number(back) },
    {
      bandAt: () => bandAt,
      gapHours: protocol.incubatorGapHours,
      alarm: { lowC: protocol.eggTooColdC, highC: protocol.eggTooHotC },
    },
    picture.facts,
  );
  // What the eggs themselves feel is shown first.
  return {
    ...span,
    series: span.series.toSorted(
      (a, b) => Number(b.spot === 'egg level') - Number(a.spot === 'egg level'),
    ),
  };
}
