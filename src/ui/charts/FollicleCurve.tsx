import { tenth } from '../../domain/core/tenth.ts';
import { useEffect, useRef } from 'preact/hooks';
import type { CurvePoint, FollicleCurveView } from '../../domain/views/follicle-curve-view.ts';
import { light } from '../light.ts';
import { dateWords, dayAndMonthWords } from '../../domain/core/day-words.ts';

/** Follicle sizes over the season, with their errors, the trend and the windows it leads to. */
export function FollicleCurve({ curve }: { readonly curve: FollicleCurveView }) {
  const box = useRef<HTMLDivElement>(null);
  const lit = light.value;
  useEffect(() => {
    const element = box.current;
    if (!element) return undefined;
    let remove: (() => void) | undefined;
    let isOver = false;
    void import('./draw-follicles.ts').then(({ drawFollicles }) => {
      if (!isOver) remove = drawFollicles(element, curve);
    });
    return () => {
      isOver = true;
      remove?.();
    };
  }, [curve, lit]);

  const caption = captionOf(curve);
  return (
    <figure class="curve">
      <h3>Largest follicle</h3>
      <div class="curve-box" role="img" aria-label={caption} ref={box} />
      <figcaption class="small quiet">
        {caption} {legendOf(curve)}
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <Numbers curve={curve} />
      </details>
    </figure>
  );
}

const captionOf = ({ points, windows }: FollicleCurveView): string => {
  const last = points.at(-1);
  const scans = points.length === 1 ? '1 scan' : `${points.length} scans`;
  const newest = last ? `, the last ${sizeWords(last)} on ${dateWords(last.night)}` : '';
  const ahead = windows.map(
    ({ what, from, likely, to }) =>
      ` ${what.charAt(0).toUpperCase()}${what.slice(1)} ${dayAndMonthWords(from)} – ${dayAndMonthWords(to)}, most likely ${dayAndMonthWords(likely)}.`,
  );
  return `${scans}${newest}.${ahead.join('')}`;
};

/** Only what is on this curve. */
function legendOf({ points, line, stays, locks }: FollicleCurveView): string {
  const has = (kind: CurvePoint['kind']): boolean => points.some((point) => point.kind === kind);
  const parts = [
    has('measured') && 'discs measured',
    has('felt') && 'squares felt',
    has('none') && 'marks pointing down: none found',
    (has('measured') || has('felt')) && 'upright bars 80 % of the error',
    line.length > 0 && 'band: the trend, 80 %',
    stays.length > 0 && 'at the foot visits',
    locks.length > 0 && 'ticks locks',
  ].filter((part) => part !== false);
  const words = parts.join(', ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}. Dotted: tonight.`;
}

const sizeWords = ({ kind, mm }: CurvePoint): string => {
  if (kind === 'none') return `none found (under ${mm} mm)`;
  return kind === 'felt' ? `felt about ${mm} mm` : `${mm} mm`;
};

const Numbers = ({
  curve: { points, line, stays, locks },
}: {
  readonly curve: FollicleCurveView;
}) => (
  <div class="stack">
    <table class="numbers">
      <thead>
        <tr>
          <th scope="col">Night</th>
          <th scope="col">Largest follicle</th>
          <th scope="col">80 %</th>
        </tr>
      </thead>
      <tbody>
        {points.toReversed().map((point) => (
          <tr key={point.id}>
            <td>{dateWords(point.night)}</td>
            <td class="number">{sizeWords(point)}</td>
            <td class="number">{point.kind === 'none' ? '' : `${point.low}–${point.high} mm`}</td>
          </tr>
        ))}
      </tbody>
    </table>
    {line.length > 0 && (
      <p class="small">
        The line:{' '}
        {[line[0], line.at(-1)]
          .filter((end) => end !== undefined)
          .map(
            ({ night, mm, low, high }) =>
              `${tenthWords(mm)} mm (${tenthWords(low)}–${tenthWords(high)}) on ${dateWords(night)}`,
          )
          .join(', ')}
        .
      </p>
    )}
    {stays.length > 0 && (
      <p class="small">
        Visits:{' '}
        {stays
          .map(
            ({ male, from, to }) => `${male} ${dayAndMonthWords(from)} – ${dayAndMonthWords(to)}`,
          )
          .join('; ')}
        .
      </p>
    )}
    {locks.length > 0 && (
      <p class="small">
        Locks: {locks.map(({ male, night }) => `${male} ${dayAndMonthWords(night)}`).join('; ')}.
      </p>
    )}
  </div>
);

const tenthWords = (mm: number): string => tenth(mm).toFixed(1);
