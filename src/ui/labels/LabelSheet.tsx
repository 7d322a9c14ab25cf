import type { LabelFormat } from '../../domain/labels/format.ts';
import { layoutLabel } from '../../domain/labels/layout.ts';
import type { OffsetMm } from '../../domain/labels/offset.ts';
import { cellOrigin, type FilledCell } from '../../domain/labels/pages.ts';
import { PaperPage } from './PaperPage.tsx';
import { PlacedMark } from './PlacedMark.tsx';

export interface LabelSheetProps {
  readonly format: LabelFormat;
  readonly cells: readonly FilledCell[];
  readonly linkBase: string | undefined;
  readonly offset: OffsetMm;
  readonly name: string;
}

/** One page of labels at its real size. */
export function LabelSheet({ format, cells, linkBase, offset, name }: LabelSheetProps) {
  return (
    <PaperPage size={format.page} offset={offset} name={name}>
      {cells.map(({ cell, subject }) => {
        const { x, y } = cellOrigin(format, cell);
        return (
          <g key={cell} transform={`translate(${x} ${y})`}>
            {layoutLabel(subject, format, linkBase).placed.map((placed, i) => (
              <PlacedMark key={i} placed={placed} />
            ))}
          </g>
        );
      })}
    </PaperPage>
  );
}
