import type { RateFigure, SpreadFigure } from '../../domain/views/review-view.ts';
import { shareWords, spreadWords } from '../../domain/views/review-words.ts';
import { intervalText, isFew, shareText, spreadTexts } from './figure-text.ts';
import { Reason } from './Reason.tsx';
import { ShareStrip, SpreadStrip } from './strips.tsx';

const BAND =
  'The band is where the share may lie in the long run, with 95 % (Wilson): wide for few cases.';

/** One share: what of what, how sure, and why it is counted so. */
export function RateRow({ figure }: { readonly figure: RateFigure }) {
  const { name, of, how, source } = shareWords[figure.name];
  return (
    <li class="review-row">
      <p class="review-head">
        <span>
          <strong>{name}</strong>{' '}
          <span class="quiet small">
            {figure.hits} of {figure.of} {of}
          </span>
        </span>
        <strong class="review-value number">{shareText(figure)}</strong>
      </p>
      {figure.of === 0 ? (
        <p class="small quiet">Nothing to count yet.</p>
      ) : (
        <>
          <ShareStrip figure={figure} />
          <p class="small">
            {intervalText(figure)} likely{isFew(figure) && ': few cases, take it as a hint'}
          </p>
        </>
      )}
      <Reason says={[how, BAND]} sources={[source, 'wilson']} />
    </li>
  );
}

/** One measure of clutches: the one in the middle, the middle half, and how far they reach. */
export function SpreadRow({ figure }: { readonly figure: SpreadFigure }) {
  const { name, how, source } = spreadWords[figure.name];
  const { median, middle, range, of } = spreadTexts(figure);
  return (
    <li class="review-row">
      <p class="review-head">
        <span>
          <strong>{name}</strong> <span class="quiet small">{of}</span>
        </span>
        <strong class="review-value number">{median}</strong>
      </p>
      <SpreadStrip figure={figure} />
      <p class="small">
        {middle ? `Half of them ${middle}. ` : 'Too few to tell a middle half. '}
        All {range}.
      </p>
      <Reason
        says={[
          how,
          'The value is the median: as many lie above it as below. The thick part holds the middle half.',
        ]}
        sources={[source]}
      />
    </li>
  );
}
