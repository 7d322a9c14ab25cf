import { hoursWords } from '../../domain/room/words.ts';
import type { ReadingsPreview } from '../../domain/room/csv/look-into.ts';
import type { Day, Moment } from '../../domain/core/calendar.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { showTemp, tempUnit } from './temp-unit.ts';

const count = (n: number): string => n.toLocaleString('en');
const at = (moment: Moment): string =>
  `${dateWords(moment.slice(0, 10) as Day)}, ${moment.slice(11, 16)}`;

/** What the file comes to, before anything is written. */
export function ImportPreview({
  preview,
  sensor,
}: {
  readonly preview: ReadingsPreview;
  readonly sensor: string;
}) {
  const unit = tempUnit.value;
  const { first, last, lowC, highC, rejected } = preview;
  const leftOut = rejected.reduce((sum, each) => sum + each.count, 0);
  return (
    <div class="note stack">
      <p>
        {count(preview.rows)} lines, <strong>{count(preview.readings)} readings</strong>
        {preview.known > 0 && `, ${count(preview.known)} you have already`}
        {leftOut > 0 && `, ${count(leftOut)} left out`}.
      </p>
      {first && last && lowC !== undefined && highC !== undefined && (
        <p>
          {at(first)} to {at(last)}; {showTemp(lowC, unit)} to {showTemp(highC, unit)}.
        </p>
      )}
      {preview.gaps > 0 && (
        <p>
          {preview.gaps === 1 ? '1 gap' : `${count(preview.gaps)} gaps, the longest`}:{' '}
          {preview.longestGaps
            .map(({ from, hours }) => `${hoursWords(hours * 60)} from ${at(from)}`)
            .join('; ')}
          . Nothing is filled in.
        </p>
      )}
      {preview.differing > 0 && (
        <p>
          <strong>
            For {count(preview.differing)} of these minutes {sensor} has another value already.
          </strong>{' '}
          If this is another sensor, give it another name.
        </p>
      )}
      {preview.usesZone && (
        <p class="small quiet">
          The file names no time zone: times are read as this device’s local time.
          {preview.inRepeatedHour > 0 &&
            ` ${count(preview.inRepeatedHour)} lines fall in the hour that came twice when clocks went back; they are told apart by their order.`}
        </p>
      )}
      {leftOut > 0 && (
        <details>
          <summary>Lines left out, and why</summary>
          <ul class="plain-list small">
            {rejected.map(({ reason, count: lines, lines: which, example }) => (
              <li key={reason}>
                {count(lines)} × {reason}
                {example !== '' && <> (“{example}”)</>}: line {which}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
