import type uPlot from 'uplot';
import type { Day } from '../../domain/core/calendar.ts';
import type { CurvePoint, FollicleCurveView } from '../../domain/views/follicle-curve-view.ts';
import { dayAndMonthWords } from '../../domain/core/day-words.ts';
import { axisLook, mountPlot, token } from './plot-frame.ts';

const HEIGHT_PX = 260;
const LEAST_TOP_MM = 40;
const DAY_S = 86_400;

/** A day as the plot's seconds. */
const secondsOf = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / 1000;

/** Draws the follicle curve into a box as wide as the box; returns how to take it away. */
export function drawFollicles(box: HTMLElement, curve: FollicleCurveView): () => void {
  const { points, line, windows, stays, locks, night } = curve;
  const days = [
    night,
    ...points.map((point) => point.night),
    ...line.map((point) => point.night),
    ...windows.flatMap(({ from, to }) => [from, to]),
    ...stays.map(({ from }) => from),
    ...locks.map((lock) => lock.night),
  ].map(secondsOf);
  const [from, to] = [Math.min(...days) - 4 * DAY_S, Math.max(...days) + 4 * DAY_S];
  const heights = [...points, ...line].map(({ high }) => high);
  const top = Math.max(LEAST_TOP_MM, ...heights) + 4;
  const axis = axisLook();
  return mountPlot(
    box,
    HEIGHT_PX,
    {
      legend: { show: false },
      cursor: { show: false },
      scales: { x: { time: true, range: () => [from, to] }, y: { range: () => [0, top] } },
      axes: [
        {
          ...axis,
          space: 60,
          values: (_plot, seconds) =>
            seconds.map((each) =>
              dayAndMonthWords(
                new Date((each + DAY_S / 2) * 1000).toISOString().slice(0, 10) as Day,
              ),
            ),
        },
        { ...axis, size: 68, values: (_plot, sizes) => sizes.map((mm) => `${mm} mm`) },
      ],
      // Only the hand-drawn marks are seen; the scales are fixed.
      series: [{}, { show: false }],
      hooks: { draw: [(plot) => drawCurve(plot, curve)] },
    },
    [
      [from, to],
      [null, null],
    ],
  );
}

interface Pen {
  readonly ctx: CanvasRenderingContext2D;
  readonly px: number;
  readonly x: (day: Day) => number;
  readonly y: (mm: number) => number;
  readonly foot: number;
  readonly head: number;
  readonly ink: string;
  readonly accent: string;
}

function drawCurve(plot: uPlot, curve: FollicleCurveView): void {
  const { ctx, bbox } = plot;
  const pen: Pen = {
    ctx,
    px: devicePixelRatio,
    x: (day) => plot.valToPos(secondsOf(day), 'x', true),
    y: (mm) => plot.valToPos(mm, 'y', true),
    head: bbox.top,
    foot: bbox.top + bbox.height,
    ink: token('--ink'),
    accent: token('--accent'),
  };
  ctx.save();
  ctx.lineWidth = 1.5 * pen.px;
  ctx.font = `${13 * pen.px}px system-ui`;
  drawTonight(pen, curve.night);
  drawLine(pen, curve.line);
  drawWindows(pen, curve.windows);
  drawPairings(pen, curve);
  for (const point of curve.points) drawPoint(pen, point);
  ctx.restore();
}

function stroke({ ctx }: Pen, points: readonly (readonly [number, number])[]): void {
  ctx.beginPath();
  for (const [x, y] of points) ctx.lineTo(x, y);
  ctx.stroke();
}

function drawTonight(pen: Pen, night: Day): void {
  pen.ctx.strokeStyle = pen.ink;
  pen.ctx.setLineDash([2 * pen.px, 4 * pen.px]);
  const x = pen.x(night);
  stroke(pen, [
    [x, pen.head],
    [x, pen.foot],
  ]);
  pen.ctx.setLineDash([]);
}

/** The line, and around it the band that holds it in four of five cases. */
function drawLine(pen: Pen, line: FollicleCurveView['line']): void {
  if (line.length === 0) return;
  const { ctx, x, y, accent } = pen;
  const around = [
    ...line.map(({ night, high }) => [x(night), y(high)] as const),
    ...line.toReversed().map(({ night, low }) => [x(night), y(low)] as const),
  ];
  ctx.fillStyle = accent;
  ctx.globalAlpha = 0.22;
  ctx.beginPath();
  for (const [left, top] of around) ctx.lineTo(left, top);
  ctx.fill();
  ctx.globalAlpha = 1;
  ctx.strokeStyle = accent;
  stroke(
    pen,
    line.map(({ night, mm }) => [x(night), y(mm)] as const),
  );
}

/** A window lies at its size, or along the top where it belongs to none; a peg marks the likeliest day. */
function drawWindows(pen: Pen, windows: FollicleCurveView['windows']): void {
  const { ctx, px, x, y, head, accent } = pen;
  for (const { what, from, likely, to, mm } of windows) {
    const level = mm === undefined ? head + 24 * px : y(mm);
    const [left, right] = [x(from), x(to)];
    ctx.strokeStyle = accent;
    ctx.lineWidth = 4 * px;
    stroke(pen, [
      [left, level],
      [right, level],
    ]);
    ctx.lineWidth = 1.5 * px;
    for (const [day, half] of [
      [from, 5],
      [likely, 9],
      [to, 5],
    ] as const) {
      stroke(pen, [
        [x(day), level - half * px],
        [x(day), level + half * px],
      ]);
    }
    ctx.fillStyle = pen.ink;
    ctx.textAlign = 'right';
    ctx.fillText(what, right, level - 8 * px);
  }
}

/** Visits along the foot, with a stitch for each lock. */
function drawPairings(pen: Pen, { stays, locks }: FollicleCurveView): void {
  const { ctx, px, x, foot, ink } = pen;
  ctx.strokeStyle = ink;
  ctx.lineWidth = 3 * px;
  for (const { from, to } of stays) {
    const left = x(from);
    stroke(pen, [
      [left, foot - 3 * px],
      [Math.max(left + 2 * px, x(to)), foot - 3 * px],
    ]);
  }
  ctx.lineWidth = 1.5 * px;
  for (const { night } of locks) {
    stroke(pen, [
      [x(night), foot],
      [x(night), foot - 14 * px],
    ]);
  }
}

/** A disc where it was measured, a hollow square where felt, a mark downwards where none was seen. */
function drawPoint(pen: Pen, { kind, night, mm, low, high }: CurvePoint): void {
  const { ctx, px } = pen;
  const [x, y] = [pen.x(night), pen.y(mm)];
  const r = 5 * px;
  ctx.strokeStyle = pen.ink;
  ctx.fillStyle = pen.ink;
  if (kind === 'none') {
    ctx.beginPath();
    ctx.moveTo(x - r, y);
    ctx.lineTo(x + r, y);
    ctx.lineTo(x, y + 1.7 * r);
    ctx.closePath();
    ctx.stroke();
    return;
  }
  stroke(pen, [
    [x, pen.y(low)],
    [x, pen.y(high)],
  ]);
  if (kind === 'measured') {
    ctx.beginPath();
    ctx.arc(x, y, r, 0, 2 * Math.PI);
    ctx.fill();
  } else {
    ctx.clearRect(x - r, y - r, 2 * r, 2 * r);
    ctx.strokeRect(x - r, y - r, 2 * r, 2 * r);
  }
}
