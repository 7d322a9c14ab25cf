import { hoursWords } from '../../domain/room/words.ts';
import type { Excursion, Statistics } from '../../domain/room/statistics.ts';
import type { SeriesView } from '../../domain/views/room-span.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { showTemp, tempUnit, type TempUnit } from './temp-unit.ts';

const percent = (part: number, whole: number): string => `${Math.round((100 * part) / whole)} %`;

const momentWords = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});
const atMinute = (minute: number): string => momentWords.format(minute * 60_000);

/** What the readings of a span come to. Each figure says what it is a share of. */
export function SpanFigures({
  series,
  gapHours,
}: {
  readonly series: SeriesView;
  readonly gapHours: number;
}) {
  const unit = tempUnit.value;
  const { statistics, lines } = series;
  const nights = lines.flatMap(({ date, nightMinC }) =>
    nightMinC === undefined ? [] : [{ date, nightMinC }],
  );
  const coldest = nights.toSorted((a, b) => a.nightMinC - b.nightMinC)[0];
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['Time in band', timeInBand(statistics)],
    ['Readings in band', readingsInBand(statistics)],
    ['Longest outside', excursion(statistics.longest, unit)],
    [
      'Lowest night',
      coldest &&
        `${showTemp(coldest.nightMinC, unit)}, night of ${dateWords(coldest.date)}; ${nights.length} ${nights.length === 1 ? 'night' : 'nights'} read`,
    ],
    [
      'Covered by readings',
      statistics.coveredMin === 0
        ? undefined
        : `${percent(statistics.coveredMin, statistics.spanMin)} of the time; farther apart than ${gapHours} h counts as a gap`,
    ],
    ['Longest gap', statistics.coveredMin === 0 ? undefined : longestGap(statistics)],
  ];
  return (
    <dl class="facts">
      {rows.map(([term, value]) =>
        value === undefined ? null : (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
    </dl>
  );
}

const timeInBand = ({
  inBandMin,
  judgedMin,
  belowMin,
  aboveMin,
}: Statistics): string | undefined =>
  judgedMin === 0
    ? undefined
    : `${percent(inBandMin, judgedMin)} of ${hoursWords(judgedMin)} covered; ${hoursWords(belowMin)} below, ${hoursWords(aboveMin)} above`;

const readingsInBand = ({ judged, judgedInBand }: Statistics): string | undefined =>
  judged === 0 ? undefined : `${judgedInBand} of ${judged}`;

const excursion = (longest: Excursion | undefined, unit: TempUnit): string | undefined =>
  longest &&
  `${hoursWords(longest.toMin - longest.fromMin)} ${longest.side}, ${atMinute(longest.fromMin)} to ${atMinute(longest.toMin)}, as far as ${showTemp(longest.extremeC, unit)}`;

function longestGap({ gaps }: Statistics): string | undefined {
  const longest = gaps.toSorted((a, b) => b.toMin - b.fromMin - (a.toMin - a.fromMin))[0];
  return (
    longest && `${hoursWords(longest.toMin - longest.fromMin)} from ${atMinute(longest.fromMin)}`
  );
}
