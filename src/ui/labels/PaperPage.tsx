import type { ComponentChildren } from 'preact';
import type { SizeMm } from '../../domain/labels/format.ts';
import type { OffsetMm } from '../../domain/labels/offset.ts';

export interface PaperPageProps {
  readonly size: SizeMm;
  readonly offset: OffsetMm;
  readonly name: string;
  readonly children: ComponentChildren;
}

/**
 * A white page whose user unit is 1 mm, black on white whatever the theme.
 *
 * All geometry is in attributes: the page forbids inline styles.
 */
export function PaperPage({ size: { width, height }, offset, name, children }: PaperPageProps) {
  return (
    <svg
      class="paper-page"
      width={`${width}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={name}
      fill="#000"
      font-family="Arial, Helvetica, 'Liberation Sans', sans-serif"
    >
      <rect width={width} height={height} fill="#fff" />
      <g transform={`translate(${offset.x} ${offset.y})`}>{children}</g>
    </svg>
  );
}
