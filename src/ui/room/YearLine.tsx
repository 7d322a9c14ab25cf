import type { Day } from '../../domain/core/calendar.ts';
import { targetOn } from '../../domain/room/programme.ts';
import type { Programme } from '../../domain/state/room-air.ts';
import { showTemp, type TempUnit } from './temp-unit.ts';

const [WIDTH, HEIGHT] = [360, 110];
const MONTHS = 'JFMAMJJASOND'.split('');
/** Any year that is no leap year: the line is the same each year. */
const YEAR = 2027;
const EVERY_DAYS = 3;

const two = (n: number): string => String(n).padStart(2, '0');
const days: readonly Day[] = Array.from({ length: 365 / EVERY_DAYS + 1 }, (_, i) => {
  const date = new Date(Date.UTC(YEAR, 0, 1 + i * EVERY_DAYS));
  return `${YEAR}-${two(date.getUTCMonth() + 1)}-${two(date.getUTCDate())}` as Day;
});

/** A programme over the year: days above, nights below, the hot spot broken. */
export function YearLine({
  programme,
  unit,
}: {
  readonly programme: Programme;
  readonly unit: TempUnit;
}) {
  const targets = days.map((day) => targetOn(programme, day));
  const air = targets.flatMap(({ dayC, nightC }) => [dayC, nightC]);
  const all = targets.flatMap(({ dayC, nightC, hotSpotC, hotSpotNightC }) =>
    [dayC, nightC, hotSpotC, hotSpotNightC].filter((each) => each !== undefined),
  );
  const [low, high] = [Math.min(...all) - 1, Math.max(...all) + 1];
  const x = (i: number): number => (i / (targets.length - 1)) * WIDTH;
  const y = (tempC: number): number => HEIGHT - 16 - ((tempC - low) / (high - low)) * (HEIGHT - 22);
  const line = (temps: readonly (number | undefined)[]): string =>
    temps
      .flatMap((tempC, i) =>
        tempC === undefined
          ? []
          : [
              `${i === 0 || temps[i - 1] === undefined ? 'M' : 'L'}${x(i).toFixed(1)} ${y(tempC).toFixed(1)}`,
            ],
      )
      .join('');
  const words = `The year: air from ${showTemp(Math.min(...air), unit)} to ${showTemp(Math.max(...air), unit)}.`;
  return (
    <figure class="curve">
      <svg class="year-line" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
        {MONTHS.map((month, i) => (
          <text key={i} x={((i + 0.5) / 12) * WIDTH} y={HEIGHT - 2}>
            {month}
          </text>
        ))}
        <path class="year-hot" d={line(targets.map(({ hotSpotC }) => hotSpotC))} />
        <path class="year-hot" d={line(targets.map(({ hotSpotNightC }) => hotSpotNightC))} />
        <path class="year-day" d={line(targets.map(({ dayC }) => dayC))} />
        <path class="year-night" d={line(targets.map(({ nightC }) => nightC))} />
      </svg>
      <figcaption class="small quiet">
        {words} Thin line: days. Thick: nights. Broken: hot spot.
      </figcaption>
    </figure>
  );
}
