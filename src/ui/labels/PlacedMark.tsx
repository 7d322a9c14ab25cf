import type { Placed } from '../../domain/labels/placed.ts';

/** One thing on a label. Unit: mm, the user unit of the page it stands on. */
export function PlacedMark({ placed }: { readonly placed: Placed }) {
  switch (placed.kind) {
    case 'qr':
      return (
        <path
          d={placed.path}
          transform={`translate(${placed.x} ${placed.y}) scale(${placed.moduleMm})`}
          shape-rendering="crispEdges"
        />
      );
    case 'line':
      return (
        <path
          d={`M${placed.from.join(' ')}L${placed.to.join(' ')}`}
          stroke="#000"
          stroke-width={placed.weight}
        />
      );
    case 'text':
      return (
        <text
          x={placed.x}
          y={placed.baseline}
          font-size={placed.size}
          font-weight={placed.bold ? 700 : 400}
          // Another font than the one reckoned with is squeezed to fit, never clipped.
          textLength={placed.width}
          lengthAdjust="spacingAndGlyphs"
        >
          {placed.text}
        </text>
      );
  }
}
