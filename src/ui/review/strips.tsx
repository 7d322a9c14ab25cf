import type { RateFigure, SpreadFigure } from '../../domain/views/review-view.ts';

// Drawn 100 units wide, with room for a post at either end, and stretched to the room there is. The words beside each say the same.

const QUARTERS = [25, 50, 75].map((at) => `M${at} 9V13`).join('');

/** The marks of a share: its interval as a trough, itself as a post. Also used on paper. */
export const ShareMarks = ({
  figure: { hits, of, interval },
}: {
  readonly figure: Pick<RateFigure, 'hits' | 'of' | 'interval'>;
}) => (
  <>
    <path class="review-axis" d={`M0 13H100M0 9V13M100 9V13${QUARTERS}`} />
    {of > 0 && (
      <>
        <rect
          class="review-likely"
          x={100 * interval.low}
          y={4}
          width={100 * (interval.high - interval.low)}
          height={6}
        />
        <path class="review-here" d={`M${(100 * hits) / of} 1V13`} />
      </>
    )}
  </>
);

/** From 0 to 100 %. */
export const ShareStrip = ({ figure }: { readonly figure: RateFigure }) => (
  <svg class="review-strip" viewBox="-1 0 102 14" preserveAspectRatio="none" aria-hidden="true">
    <ShareMarks figure={figure} />
  </svg>
);

/** From the least to the most; the middle half thick, the median as a post. */
export function SpreadStrip({
  figure: { least, most, median, quartiles },
}: {
  readonly figure: SpreadFigure;
}) {
  const room = most - least || 1;
  const x = (value: number): number => 2 + (96 * (value - least)) / room;
  return (
    <svg class="review-strip" viewBox="-1 0 102 14" preserveAspectRatio="none" aria-hidden="true">
      <path class="review-axis" d={`M2 7H98M2 3V11M98 3V11`} />
      {quartiles && (
        <rect
          class="review-likely"
          x={x(quartiles[0])}
          y={4}
          width={x(quartiles[1]) - x(quartiles[0])}
          height={6}
        />
      )}
      <path class="review-here" d={`M${x(median)} 1V13`} />
    </svg>
  );
}
