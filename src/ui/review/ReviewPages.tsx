import { daysWords } from '../../domain/core/day-words.ts';
import type { SizeMm } from '../../domain/labels/format.ts';
import { textWidth } from '../../domain/labels/text-width.ts';
import type { ReviewView } from '../../domain/views/review-view.ts';
import { lagWords, shareWords, spreadWords } from '../../domain/views/review-words.ts';
import { PaperPage } from '../labels/PaperPage.tsx';
import { intervalText, shareText, spreadTexts } from './figure-text.ts';
import { ShareMarks } from './strips.tsx';

const MARGIN = 12;
const HEAD = 16;
const ROW = 6.4;
/** Where each cell begins, and what it may take; the last one ends at the right margin. Unit: mm. */
const COLUMNS = [
  { x: MARGIN, room: 66 },
  { x: 80, room: 42 },
  { x: 124, room: 18 },
  { x: 0, room: 22 },
] as const;
const STRIP_X = 142;

/** One line of print: what, how many, how much, how sure. */
interface Printed {
  readonly cells: readonly [what: string, counted: string, value: string, sure: string];
  readonly isHead?: boolean;
  readonly figure?: ReviewView['rates'][keyof ReviewView['rates']];
}

/** The review as a sheet to keep, black on white; as many pages as it takes. */
export function reviewPages(view: ReviewView, size: SizeMm) {
  const rows = rowsOf(view);
  const perPage = Math.floor((size.height - 2 * MARGIN - HEAD) / ROW);
  const pages = Math.max(1, Math.ceil(rows.length / perPage));
  const season = view.season === '' ? 'all seasons' : view.season;
  return Array.from({ length: pages }, (_, page) => (
    <PaperPage
      size={size}
      offset={{ x: 0, y: 0 }}
      name={`Season review, page ${page + 1} of ${pages}`}
    >
      <g class="review-paper">
        <text x={MARGIN} y={MARGIN + 5} font-size="5" font-weight="bold">
          Season review, {season}
        </text>
        <text x={size.width - MARGIN} y={MARGIN + 5} font-size="2.7" text-anchor="end">
          Nightdrop, page {page + 1} of {pages}
        </text>
        <text x={MARGIN} y={MARGIN + 10} font-size="2.7">
          Bars: 95 % intervals (Wilson), from 0 to 100 %. Seasons still under way are not counted.
        </text>
        {rows.slice(page * perPage, (page + 1) * perPage).map((row, n) => (
          <PrintedRow key={n} row={row} y={MARGIN + HEAD + n * ROW} width={size.width} />
        ))}
      </g>
    </PaperPage>
  ));
}

const head = (what: string): Printed => ({ cells: [what, '', '', ''], isHead: true });

function rowsOf(view: ReviewView): readonly Printed[] {
  const { rates, spreads, lags, bySeason, females, males } = view;
  return [
    head('Shares'),
    ...Object.values(rates).map((figure): Printed => ({
      cells: [
        shareWords[figure.name].name,
        `${figure.hits} of ${figure.of} ${shareWords[figure.name].of}`,
        shareText(figure),
        intervalText(figure),
      ],
      figure,
    })),
    head('Clutches: median, range'),
    ...spreads.map((figure): Printed => {
      const { of, median, range } = spreadTexts(figure);
      return { cells: [spreadWords[figure.name].name, of, median, range] };
    }),
    head('How long it took: median, middle half'),
    ...lags.map(({ lag, own, spread }): Printed => {
      const median = spread ? daysWords(Math.round(spread.median * 2) / 2) : '–';
      const middle = spread?.quartiles?.map((days) => Math.round(days * 2) / 2).join(' to ');
      return {
        cells: [lagWords[lag].name, `${own.length} times`, median, middle ? `${middle} days` : ''],
      };
    }),
    ...[
      ['Laid, season by season', bySeason] as const,
      ['Laid, by female', females] as const,
      ['Laid, by male: of the females he visited', males] as const,
    ].flatMap(([title, lines]): readonly Printed[] => [
      head(title),
      ...lines.map(({ name, rates: { laidOfPaired: figure }, clutches }): Printed => ({
        cells: [
          name,
          `${figure.hits} of ${figure.of}; ${clutches === 1 ? '1 clutch' : `${clutches} clutches`}`,
          shareText(figure),
          intervalText(figure),
        ],
        figure,
      })),
    ]),
  ];
}

function PrintedRow({
  row: { cells, isHead = false, figure },
  y,
  width,
}: {
  readonly row: Printed;
  readonly y: number;
  readonly width: number;
}) {
  const right = width - MARGIN;
  const stripMm = right - COLUMNS[3].room - STRIP_X;
  return (
    <g>
      {cells.map((cell, n) => {
        const size = isHead ? 3.8 : 3;
        const { x, room } = COLUMNS[n as 0 | 1 | 2 | 3];
        const widthMm = textWidth(cell, size, isHead);
        return (
          <text
            key={n}
            x={n === 3 ? right : x}
            y={y + ROW - 2}
            font-size={size}
            font-weight={isHead ? 'bold' : 'normal'}
            text-anchor={n === 3 ? 'end' : undefined}
            textLength={isHead ? widthMm : Math.min(room, widthMm)}
            lengthAdjust="spacingAndGlyphs"
          >
            {cell}
          </text>
        );
      })}
      {figure && (
        <g
          transform={`translate(${STRIP_X} ${y + 0.6}) scale(${stripMm / 100} ${(ROW - 1.4) / 14})`}
        >
          <ShareMarks figure={figure} />
        </g>
      )}
      <line
        x1={MARGIN}
        x2={right}
        y1={y + ROW - 0.4}
        y2={y + ROW - 0.4}
        stroke="#000"
        stroke-width={isHead ? 0.4 : 0.08}
      />
    </g>
  );
}
