import uPlot from 'uplot';
import type { PlotBand, SeriesView } from '../../domain/views/room-span.ts';
import 'uplot/dist/uPlot.min.css';

const HEIGHT_PX = 240;
/** Fewer points than this are shown one by one. */
const FEW_POINTS = 60;

const token = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim();

export interface RoomDrawing {
  readonly fromMs: number;
  readonly toMs: number;
  readonly points: SeriesView['points'];
  readonly bands: readonly PlotBand[];
  /** From °C into the keeper’s unit. */
  readonly inUnit: (tempC: number) => number;
  readonly isByHand: boolean;
}

/** Draws readings over the programme’s band; returns how to take the drawing away. */
export function drawRoom(box: HTMLElement, drawing: RoomDrawing): () => void {
  const { fromMs, toMs, points, bands, inUnit, isByHand } = drawing;
  const [ink, line, accent, band] = [
    token('--ink-soft'),
    token('--line'),
    token('--accent'),
    token('--edge'),
  ];
  const axis = {
    stroke: ink,
    grid: { stroke: line, width: 1 },
    ticks: { stroke: line, width: 1 },
    font: '13px system-ui',
  };
  const temps = points.map(([, tempC]) => (tempC === null ? null : inUnit(tempC)));
  const shown = [
    ...temps.flatMap((temp) => temp ?? []),
    ...bands.flatMap(({ lowC, highC }) => [inUnit(lowC), inUnit(highC)]),
  ];
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  const plot = new uPlot(
    {
      width: box.clientWidth,
      height: HEIGHT_PX,
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: true, range: [fromMs / 1000, toMs / 1000] },
        y: { range: [Math.floor(low - 0.5), Math.ceil(high + 0.5)] },
      },
      axes: [
        {
          ...axis,
          space: 70,
          values: (_plot, ticks, _axis, _space, step) => ticks.map(dateOr(step)),
        },
        { ...axis, size: 54, values: (_plot, ticks) => ticks.map((tick) => `${tick}°`) },
      ],
      series: [
        {},
        {
          stroke: accent,
          width: 2,
          points: {
            show: isByHand || points.length < FEW_POINTS,
            size: 7,
            fill: accent,
            stroke: accent,
          },
        },
      ],
      hooks: { drawAxes: [(drawn) => drawBands(drawn, bands, inUnit, band, ink)] },
    },
    [points.map(([ms]) => ms / 1000), temps],
    box,
  );
  const follow = new ResizeObserver(() =>
    plot.setSize({ width: box.clientWidth, height: HEIGHT_PX }),
  );
  follow.observe(box);
  return () => {
    follow.disconnect();
    plot.destroy();
  };
}

const DAY_S = 86_400;
const dayWords = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const clockWords = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** Days where marks are days apart, else the time of day. */
const dateOr =
  (stepS: number) =>
  (atS: number): string =>
    (stepS < DAY_S ? clockWords : dayWords).format(atS * 1000);

/** The band lies under the curve, with an edge above and below that does not need colour. */
function drawBands(
  plot: uPlot,
  bands: readonly PlotBand[],
  inUnit: RoomDrawing['inUnit'],
  fill: string,
  edge: string,
): void {
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  ctx.lineWidth = devicePixelRatio;
  for (const { fromMs, toMs, lowC, highC } of bands) {
    const [left, right] = [fromMs, toMs].map((ms) => plot.valToPos(ms / 1000, 'x', true));
    const [top, foot] = [highC, lowC].map((tempC) => plot.valToPos(inUnit(tempC), 'y', true));
    if (left === undefined || right === undefined || top === undefined || foot === undefined)
      continue;
    ctx.fillStyle = fill;
    ctx.globalAlpha = 0.35;
    ctx.fillRect(left, top, right - left, foot - top);
    ctx.globalAlpha = 1;
    ctx.strokeStyle = edge;
    ctx.beginPath();
    ctx.moveTo(left, top);
    ctx.lineTo(right, top);
    ctx.moveTo(left, foot);
    ctx.lineTo(right, foot);
    ctx.stroke();
  }
  ctx.restore();
}
