import type { Lane, LaneMark, LaneWindow, LanesView } from '../../domain/views/lanes-view.ts';
import {
  beadRadius,
  cordSpan,
  cordY,
  eventLook,
  knotRadius,
  markX,
  stitchLength,
  tentShape,
  type StripScale,
} from './strip-shapes.ts';

interface Scaled {
  readonly scale: StripScale;
}

/** Month lines and tonight, behind all cords. */
export function StripGround({
  view: { months, days, tonightAt },
  scale,
}: Scaled & { readonly view: Pick<LanesView, 'months' | 'days' | 'tonightAt'> }) {
  const { perDay, height, line } = scale;
  const months_ = months.map(({ at }) => `M${at * perDay} 0V${height}`).join('');
  const tonight = (tonightAt + 0.5) * perDay;
  return (
    <>
      <path
        class="strip-month"
        stroke-width={line * 0.6}
        d={`${months_}M${days * perDay} 0V${height}`}
      />
      <path class="strip-tonight" stroke-width={line * 1.4} d={`M${tonight} 0V${height}`} />
    </>
  );
}

/** One female's cord, with all that happened and all that is coming. */
export function LaneStrip({
  lane,
  tonightAt,
  scale,
}: Scaled & { readonly lane: Lane; readonly tonightAt: number }) {
  const y = cordY(scale);
  const { start, tonight, end } = cordSpan(lane, tonightAt, scale);
  const { line, perDay } = scale;
  const stayY = y + stitchLength(scale);
  return (
    <g>
      <path class="strip-cord" stroke-width={line} d={`M${start} ${y}H${tonight}`} />
      <path
        class="strip-cord"
        stroke-width={line}
        stroke-dasharray={`${line} ${line * 2.5}`}
        d={`M${tonight} ${y}H${end}`}
      />
      {lane.stays.map(({ from, to }) => (
        <path
          key={from}
          class="strip-stay"
          stroke-width={line * 1.4}
          d={`M${from * perDay} ${stayY}H${(to + 1) * perDay}`}
        />
      ))}
      {lane.windows.toReversed().map((window) => (
        <Tent key={window.event} window={window} scale={scale} />
      ))}
      {lane.marks.map((mark) => (
        <Mark key={`${mark.kind}${mark.at}`} mark={mark} scale={scale} />
      ))}
    </g>
  );
}

/** A coming window: a tent whose ridge stands over the likeliest day. */
export function Tent({
  window,
  scale,
}: Scaled & {
  readonly window: Pick<LaneWindow, 'event' | 'fromAt' | 'likelyAt' | 'toAt' | 'isOverdue'>;
}) {
  const { letter, fill } = eventLook[window.event];
  const shape = tentShape(window, scale);
  const { line } = scale;
  const isOnSolid = fill === 'solid' && shape.holdsLetter;
  return (
    <g>
      <path
        class={fill === 'solid' ? 'tent tent-solid' : 'tent'}
        stroke-width={line}
        stroke-dasharray={fill === 'dashed' ? `${line * 1.5} ${line * 1.5}` : undefined}
        d={shape.outline}
      />
      {fill === 'striped' && <path class="tent-line" stroke-width={line * 0.7} d={shape.stripes} />}
      {fill !== 'solid' && <path class="tent-line" stroke-width={line} d={shape.pole} />}
      <text
        class={isOnSolid ? 'strip-letter strip-letter-on' : 'strip-letter'}
        stroke-width={isOnSolid ? 0 : line * 2.5}
        font-size={scale.letter}
        x={shape.letterX}
        y={shape.letterY}
      >
        {window.isOverdue ? `${letter}!` : letter}
      </text>
    </g>
  );
}

/** Something that happened, where it lies on the cord. */
export function Mark({ mark, scale }: Scaled & { readonly mark: Omit<LaneMark, 'night'> }) {
  const x = markX(mark, scale);
  const y = cordY(scale);
  const { line, perDay, letter } = scale;
  switch (mark.kind) {
    case 'scan':
      return (
        <circle
          class="strip-bead"
          stroke-width={line}
          cx={x}
          cy={y}
          r={beadRadius(mark.mm ?? 0, scale)}
        />
      );
    case 'felt': {
      const r = beadRadius(mark.mm ?? 0, scale) * 0.9;
      return (
        <rect
          class="strip-bead"
          stroke-width={line}
          x={x - r}
          y={y - r}
          width={2 * r}
          height={2 * r}
        />
      );
    }
    case 'none seen': {
      const r = letter * 0.2;
      return (
        <path
          class="strip-bead"
          stroke-width={line}
          d={`M${x - r} ${y - r}H${x + r}L${x} ${y + r}Z`}
        />
      );
    }
    case 'lock':
      return (
        <path
          class="strip-stay"
          stroke-width={line * 1.2}
          d={`M${x} ${y}V${y + stitchLength(scale)}`}
        />
      );
    default: {
      const from = (mark.from + 0.5) * perDay;
      return (
        <g>
          <path class="strip-cord" stroke-width={letter * 0.5} d={`M${from} ${y}H${x}`} />
          <circle class="strip-knot" cx={x} cy={y} r={knotRadius(scale)} />
          <text
            class="strip-letter strip-letter-on"
            stroke-width={0}
            font-size={letter * 0.92}
            x={x}
            y={y}
          >
            {eventLook[mark.kind].letter}
          </text>
        </g>
      );
    }
  }
}
