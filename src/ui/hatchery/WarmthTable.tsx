import { dateWords } from '../../domain/core/day-words.ts';
import type { DayLine } from '../../domain/room/statistics.ts';
import { showTemp, tempUnit } from '../room/temp-unit.ts';

/** Day by day: the lowest and the highest that was read. */
export function WarmthTable({ lines }: { readonly lines: readonly DayLine[] }) {
  const unit = tempUnit.value;
  const temp = (tempC: number | undefined) => (tempC === undefined ? '–' : showTemp(tempC, unit));
  return (
    <table class="numbers">
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">Lowest</th>
          <th scope="col">Highest</th>
          <th scope="col">Readings</th>
        </tr>
      </thead>
      <tbody>
        {lines.toReversed().map(({ date, dayMinC, dayMaxC, readings }) => (
          <tr key={date}>
            <td>{dateWords(date)}</td>
            <td class="number">{temp(dayMinC)}</td>
            <td class="number">{temp(dayMaxC)}</td>
            <td class="number">{readings}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
