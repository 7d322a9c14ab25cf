import type { DayLine } from '../../domain/room/statistics.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { showTemp, tempUnit } from './temp-unit.ts';

/** Day by day: the highest by day, and the lowest of the night after it. */
export function DayTable({ lines }: { readonly lines: readonly DayLine[] }) {
  const unit = tempUnit.value;
  const temp = (tempC: number | undefined) =>
    tempC === undefined ? 'not read' : showTemp(tempC, unit);
  return (
    <table class="numbers">
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">Day, highest</th>
          <th scope="col">Night, lowest</th>
          <th scope="col">Night, asked for</th>
        </tr>
      </thead>
      <tbody>
        {lines.toReversed().map(({ date, dayMaxC, nightMinC, nightTargetC }) => (
          <tr key={date}>
            <td>{dateWords(date)}</td>
            <td class="number">{temp(dayMaxC)}</td>
            <td class="number">{temp(nightMinC)}</td>
            <td class="number">{nightTargetC === undefined ? '–' : temp(nightTargetC)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
