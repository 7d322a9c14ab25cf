import { calibrationPage } from '../../domain/labels/calibration.ts';
import type { LabelFormat } from '../../domain/labels/format.ts';
import type { OffsetMm } from '../../domain/labels/offset.ts';
import type { Placed } from '../../domain/labels/placed.ts';
import { PaperPage } from './PaperPage.tsx';
import { PlacedMark } from './PlacedMark.tsx';

const draw = (marks: readonly Placed[]) =>
  marks.map((placed, i) => <PlacedMark key={i} placed={placed} />);

/** The test page for one format, moved by the offset that is being tried. */
export function CalibrationSheet({
  format,
  offset,
}: {
  readonly format: LabelFormat;
  readonly offset: OffsetMm;
}) {
  const { edges, cleared, readings } = calibrationPage(format);
  return (
    <PaperPage size={format.page} offset={offset} name="Test page: edges of the labels and rulers">
      {draw(edges)}
      <rect {...cleared} fill="#fff" />
      {draw(readings)}
    </PaperPage>
  );
}
