import type { ComponentChildren } from 'preact';
import type { SizeMm } from '../../domain/labels/format.ts';
import { truncate, wrap } from '../../domain/labels/fit-text.ts';
import { textWidth } from '../../domain/labels/text-width.ts';
import { PaperPage } from '../labels/PaperPage.tsx';

// Sheets of text that break into as many pages as they take. Unit: mm.

export const MARGIN = 14;
const HEAD = 20;
const FOOT = 8;
export const TEXT = 3.5;
const LEADING = 1.32;

/** A piece that stays whole on its page. */
export interface Block {
  readonly height: number;
  readonly draw: () => ComponentChildren;
}

export const gap = (height: number): Block => ({ height, draw: () => null });

/** Text as wide as was reckoned: another font than that is squeezed to fit, and never clipped. */
export const Words = ({
  x,
  y,
  size = TEXT,
  bold = false,
  children,
}: {
  readonly x: number;
  readonly y: number;
  readonly size?: number;
  readonly bold?: boolean;
  readonly children: string;
}) =>
  children === '' ? null : (
    <text
      x={x}
      y={y}
      font-size={size}
      font-weight={bold ? 'bold' : 'normal'}
      textLength={textWidth(children, size, bold)}
      lengthAdjust="spacingAndGlyphs"
    >
      {children}
    </text>
  );

export const headline = (words: string): Block => ({
  height: 8.4,
  draw: () => (
    <Words x={MARGIN} y={6.4} size={4.2} bold>
      {words}
    </Words>
  ),
});

/** A paragraph as wide as the page. */
export function paragraph(words: string, size: SizeMm, textSize = TEXT): Block {
  return lines(wrap(words, size.width - 2 * MARGIN, textSize, false), MARGIN, textSize);
}

/** A heading word and what belongs to it, which may take several lines; nothing leaves room to write. */
export function fact(term: string, says: string, size: SizeMm, indent = 32): Block {
  const width = size.width - 2 * MARGIN - indent;
  const left = MARGIN + indent;
  const body = lines(wrap(says, width, TEXT, false), left, TEXT);
  const isOpen = says === '';
  return {
    height: isOpen ? 7.5 : body.height,
    draw: () => (
      <>
        <Words x={MARGIN} y={isOpen ? 6 : TEXT}>
          {term}
        </Words>
        {isOpen ? (
          <line x1={left} x2={left + width / 2} y1={6.6} y2={6.6} {...thin} />
        ) : (
          body.draw()
        )}
      </>
    ),
  };
}

const thin = { stroke: '#000', 'stroke-width': 0.25 } as const;

function lines(texts: readonly string[], x: number, textSize: number): Block {
  const step = textSize * LEADING;
  return {
    height: Math.max(1, texts.length) * step,
    draw: () =>
      texts.map((text, i) => (
        <Words key={i} x={x} y={textSize + i * step} size={textSize}>
          {text}
        </Words>
      )),
  };
}

/** A row of a table; what is too wide for its column is set in more lines. */
export function row(
  cells: readonly (readonly [words: string, at: number, width: number])[],
  isHead = false,
): Block {
  const set = cells.map(([words, at, width]) => [wrap(words, width, TEXT, isHead), at] as const);
  const most = Math.max(1, ...set.map(([texts]) => texts.length));
  return {
    height: most * TEXT * LEADING + (isHead ? 0.8 : 0),
    draw: () =>
      set.map(([texts, at]) =>
        texts.map((text, i) => (
          <Words key={`${at} ${i}`} x={MARGIN + at} y={TEXT + i * TEXT * LEADING} bold={isHead}>
            {text}
          </Words>
        )),
      ),
  };
}

/** Lines to write on by hand, with what goes there under each. */
export function toWrite(words: readonly string[], size: SizeMm): Block {
  const width = (size.width - 2 * MARGIN - (words.length - 1) * 8) / words.length;
  return {
    height: 16,
    draw: () =>
      words.map((word, i) => {
        const x = MARGIN + i * (width + 8);
        return (
          <g key={word}>
            <line x1={x} x2={x + width} y1={10.5} y2={10.5} {...thin} />
            <Words x={x} y={14.2} size={2.8}>
              {word}
            </Words>
          </g>
        );
      }),
  };
}

/** As many pages as the blocks take, each with the same head. */
export function flow(title: string, beside: string, blocks: readonly Block[], size: SizeMm) {
  const room = size.height - 2 * MARGIN - HEAD - FOOT;
  const pages: Block[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    if (used + block.height > room && used > 0) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(block);
    used += block.height;
  }
  return pages.map((page, n) => (
    <PaperPage
      size={size}
      offset={{ x: 0, y: 0 }}
      name={`${title}, page ${n + 1} of ${pages.length}`}
    >
      <Words x={MARGIN} y={MARGIN + 6} size={6.4} bold>
        {title}
      </Words>
      <Words x={MARGIN} y={MARGIN + 12.4} size={3.6}>
        {truncate(beside, size.width - 2 * MARGIN, 3.6, false)}
      </Words>
      <line
        x1={MARGIN}
        x2={size.width - MARGIN}
        y1={MARGIN + 15.6}
        y2={MARGIN + 15.6}
        stroke="#000"
        stroke-width={0.4}
      />
      {page.map((block, i) => (
        <g key={i} transform={`translate(0 ${MARGIN + HEAD + heightOf(page.slice(0, i))})`}>
          {block.draw()}
        </g>
      ))}
      <text
        x={size.width - MARGIN}
        y={size.height - MARGIN + 2}
        font-size={2.8}
        text-anchor="end"
        fill="#333"
      >
        Nightdrop, page {n + 1} of {pages.length}
      </text>
    </PaperPage>
  ));
}

const heightOf = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, { height }) => sum + height, 0);
