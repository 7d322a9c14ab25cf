import type { SizeMm } from '../../domain/labels/format.ts';
import type { FeedingView } from '../../domain/views/feeding-view.ts';
import { sizeName } from '../../domain/views/prey-words.ts';
import { PaperPage } from '../labels/PaperPage.tsx';
import { dateWords } from '../../domain/core/day-words.ts';

const MARGIN = 12;
const ROW = 6.2;
const HEAD = 12;

interface Printed {
  readonly cells: readonly [string, string, string, string];
  readonly isHead: boolean;
}

/** The thaw list, then the tubs in rack order with room for a tick each; as many pages as it takes. */
export function feedingPages(view: FeedingView, size: SizeMm) {
  const rows = rowsOf(view);
  const perPage = Math.floor((size.height - 2 * MARGIN - HEAD) / ROW);
  const pages = Math.max(1, Math.ceil(rows.length / perPage));
  return Array.from({ length: pages }, (_, page) => (
    <PaperPage size={size} offset={{ x: 0, y: 0 }} name={`Feeding, page ${page + 1} of ${pages}`}>
      <text x={MARGIN} y={MARGIN + 5} font-size="5" font-weight="bold">
        Feeding, night of {dateWords(view.night)}
      </text>
      <text x={size.width - MARGIN} y={MARGIN + 5} font-size="3.5" text-anchor="end">
        {page + 1} of {pages}
      </text>
      {rows.slice(page * perPage, (page + 1) * perPage).map((row, i) => (
        <PrintedRow key={i} row={row} y={MARGIN + HEAD + i * ROW} width={size.width} />
      ))}
    </PaperPage>
  ));
}

const head = (text: string): Printed => ({ cells: [text, '', '', ''], isHead: true });

function rowsOf({ thaw, due, blocked }: FeedingView): readonly Printed[] {
  return [
    head('Thaw'),
    ...thaw.map(({ kind, size, thaw: out, offered, spare }): Printed => ({
      cells: [
        String(out),
        sizeName({ kind, size }),
        `${offered} due`,
        spare > 0 ? `about ${spare} spare` : '',
      ],
      isHead: false,
    })),
    head('Due, in rack order'),
    ...due.map(({ position, name, words }): Printed => {
      return { cells: [position, name, words, 'ate   refused   left'], isHead: false };
    }),
    ...(blocked.length > 0 ? [head('Not tonight')] : []),
    ...blocked.map(({ position, name, blocked: why = '' }): Printed => {
      return { cells: [position, name, why, ''], isHead: false };
    }),
  ];
}

function PrintedRow({
  row: { cells, isHead },
  y,
  width,
}: {
  readonly row: Printed;
  readonly y: number;
  readonly width: number;
}) {
  const columns = [MARGIN, MARGIN + 18, MARGIN + 72, width - MARGIN - 42];
  return (
    <g>
      {cells.map((cell, i) => (
        <text
          key={i}
          x={columns[i]}
          y={y + ROW - 2}
          font-size={isHead ? 4.4 : 3.8}
          font-weight={isHead ? 'bold' : 'normal'}
        >
          {cell}
        </text>
      ))}
      <line
        x1={MARGIN}
        x2={width - MARGIN}
        y1={y + ROW - 0.4}
        y2={y + ROW - 0.4}
        stroke="#000"
        stroke-width={isHead ? 0.4 : 0.1}
      />
    </g>
  );
}
