import type { LagFigure } from '../../domain/review/lags.ts';
import { daysWords } from '../../domain/core/day-words.ts';
import { lagWords } from '../../domain/views/review-words.ts';
import { byDay } from './figure-text.ts';
import { Reason } from './Reason.tsx';

const half = (days: number): number => Math.round(days * 2) / 2;

const windowText = (days: {
  readonly from: number;
  readonly likely: number;
  readonly to: number;
}) => `${days.from} to ${days.to} days, most likely ${days.likely}`;

/** How long one step took, beside what the protocol and the keeper's own cycles make of it. */
export function LagRow({ figure }: { readonly figure: LagFigure }) {
  const { spread, usual, learnt, own, loose } = figure;
  const { name, how, source } = lagWords[figure.lag];
  return (
    <li class="review-row">
      <p class="review-head">
        <span>
          <strong>{name}</strong>{' '}
          <span class="quiet small">{own.length === 1 ? '1 time' : `${own.length} times`}</span>
        </span>
        <strong class="review-value number">{spread ? daysWords(half(spread.median)) : '–'}</strong>
      </p>
      {(own.length > 0 || usual) && <LagStrip figure={figure} />}
      <p class="small">
        {spread ? `${rangeText(figure)}. ` : 'None with both dates on record. '}
        {spread?.quartiles &&
          `Half of them ${half(spread.quartiles[0])} to ${half(spread.quartiles[1])} days. `}
        {loose > 0 && `${loose} known only between two looks.`}
      </p>
      {usual && <p class="small quiet">Usual, by your protocol: {windowText(usual)}.</p>}
      {learnt && learnt.cycles > 0 && (
        <p class="small quiet">
          Yours, all seasons: {windowText(learnt)} ({learnt.cycles} cycles).
        </p>
      )}
      <Reason
        says={[
          how,
          'The value is the median. Posts: how many took each number of days; one known only between two looks is spread over the days it may have been.',
          'Windows hold in 4 of 5 cases. Yours starts from the usual one and moves with each cycle.',
        ]}
        sources={[source, 'windowLearning']}
      />
    </li>
  );
}

const rangeText = ({ own }: LagFigure): string => {
  const least = Math.min(...own.map(({ earliestDays }) => earliestDays));
  const most = Math.max(...own.map(({ latestDays }) => latestDays));
  return least === most ? `All ${daysWords(least)}` : `All within ${least} to ${most} days`;
};

const HEIGHT = 34;
const FLOOR = 22;

/** Own steps as posts on a line of days; under it the usual window, dashed, and the own one, solid. */
function LagStrip({ figure: { own, usual, learnt } }: { readonly figure: LagFigure }) {
  const posts = byDay(own);
  const window = learnt && learnt.cycles > 0 ? learnt : undefined;
  const days = [
    ...posts.keys(),
    ...[usual, window].flatMap((each) => (each ? [each.from, each.to] : [])),
  ];
  const [from, to] = [Math.min(...days) - 1, Math.max(...days) + 1];
  const tallest = Math.max(1, ...posts.values());
  return (
    <div class="lag-strip">
      <svg
        viewBox={`${from - 0.5} 0 ${to - from + 1} ${HEIGHT}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path class="review-axis" d={`M${from - 0.5} ${FLOOR}H${to + 0.5}`} />
        {[...posts].map(([day, count]) => {
          const height = ((FLOOR - 1) * count) / tallest;
          return (
            <rect
              key={day}
              class="review-post"
              x={day - 0.35}
              y={FLOOR - height}
              width={0.7}
              height={height}
            />
          );
        })}
        {usual && (
          <path class="lag-usual" d={`M${usual.from - 0.5} ${FLOOR + 4}H${usual.to + 0.5}`} />
        )}
        {window && (
          <path class="lag-own" d={`M${window.from - 0.5} ${FLOOR + 9}H${window.to + 0.5}`} />
        )}
      </svg>
      <p class="lag-ends small quiet number" aria-hidden="true">
        <span>day {from}</span>
        <span>day {to}</span>
      </p>
    </div>
  );
}
