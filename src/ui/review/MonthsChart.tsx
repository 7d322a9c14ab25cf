import { monthName } from '../../domain/core/month-names.ts';
import type { RateFigure } from '../../domain/views/review-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { intervalText, shareText } from './figure-text.ts';

const HEIGHT = 60;

/** Refusals through the year: a post for each month, its interval as a line through it. */
export function MonthsChart({ months }: { readonly months: readonly RateFigure[] }) {
  const y = (share: number): number => HEIGHT - HEIGHT * share;
  return (
    <>
      <div class="months-chart">
        <svg
          viewBox={`0 0 120 ${HEIGHT}`}
          preserveAspectRatio="none"
          role="img"
          aria-label="Share of offers refused in each month, 0 to 100 %. The table below holds the same numbers."
        >
          <path class="review-axis" d={`M0 ${HEIGHT}H120M0 ${HEIGHT / 2}H120M0 0H120`} />
          {months.map(({ hits, of, interval }, n) =>
            of === 0 ? null : (
              <g key={n}>
                <rect
                  class="review-post"
                  x={n * 10 + 2}
                  y={y(hits / of)}
                  width={6}
                  height={(HEIGHT * hits) / of}
                />
                <path
                  class="review-whisker"
                  d={`M${n * 10 + 5} ${y(interval.high)}V${y(interval.low)}`}
                />
              </g>
            ),
          )}
        </svg>
        <ol class="months-names small quiet" aria-hidden="true">
          {months.map((_, n) => (
            <li key={n}>{monthName(n + 1).charAt(0)}</li>
          ))}
        </ol>
      </div>
      <p class="small quiet">The top is 100 %, the line in the middle 50 %.</p>
      <Unfolds summary="The same as a table">
        {() => (
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col">Month</th>
                <th scope="col">Refused</th>
                <th scope="col">Share</th>
                <th scope="col">95 %</th>
              </tr>
            </thead>
            <tbody>
              {months.map((month, n) => (
                <tr key={n}>
                  <th scope="row">{monthName(n + 1)}</th>
                  <td class="number">
                    {month.hits} of {month.of}
                  </td>
                  <td class="number">{shareText(month)}</td>
                  <td class="number">{intervalText(month)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </Unfolds>
    </>
  );
}
