import type uPlot from 'uplot';
import { GRAMS_PER_POUND } from '../../domain/core/units.ts';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import type { WeightView } from '../../domain/views/weight-view.ts';
import { massUnit } from '../mass-unit.ts';
import { axisLook, mountPlot, token } from './plot-frame.ts';

const HEIGHT_PX = 220;
const MEAL_TICK_PX = 10;

/** Draws the curve into a box as wide as the box; returns how to take it away. */
export function drawWeights(
  box: HTMLElement,
  masses: AnimalView['masses'],
  meals: AnimalView['meals'],
  more: Pick<WeightView, 'line' | 'target'> | undefined,
): () => void {
  const accent = token('--accent');
  const axis = axisLook();
  const first = (masses[0]?.ms ?? 0) / 1000;
  const last = Math.max((masses.at(-1)?.ms ?? 0) / 1000, more?.target ? noonOf(more.target.to) : 0);
  const heaviest = Math.max(more?.target?.targetG ?? 0, ...masses.map(({ massG }) => massG));
  const lightest = Math.min(...masses.map(({ massG }) => massG));
  const air = Math.max(5, (heaviest - lightest) / 10);
  return mountPlot(
    box,
    HEIGHT_PX,
    {
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: true, range: () => [first, last] },
        y: { range: () => [Math.max(0, lightest - air), heaviest + air] },
      },
      axes: [
        { ...axis, space: 70 },
        { ...axis, size: 62, values: (_plot, grams) => grams.map(onAxis) },
      ],
      series: [
        {},
        { stroke: accent, width: 2, points: { show: true, size: 7, fill: accent, stroke: accent } },
      ],
      hooks: {
        draw: [
          (drawn) => drawMeals(drawn, meals, axis.stroke),
          (drawn) => drawAhead(drawn, more, axis.stroke),
        ],
      },
    },
    [masses.map(({ ms }) => ms / 1000), masses.map(({ massG }) => massG)],
  );
}

/** Short: in pounds, not pounds and ounces. */
const onAxis = (massG: number): string =>
  massUnit() === 'g' ? `${massG} g` : `${(massG / GRAMS_PER_POUND).toFixed(1)} lb`;

const noonOf = (night: string): number => Date.parse(`${night}T12:00:00`) / 1000;

/** The trend as a dashed line, and the window of the target as a box at its height. */
function drawAhead(
  plot: uPlot,
  more: Pick<WeightView, 'line' | 'target'> | undefined,
  colour: string,
): void {
  const { ctx } = plot;
  const at = (night: string, massG: number): [number, number] => [
    plot.valToPos(noonOf(night), 'x', true),
    plot.valToPos(massG, 'y', true),
  ];
  const [from, to] = more?.line ?? [];
  ctx.save();
  ctx.strokeStyle = colour;
  ctx.lineWidth = 2 * devicePixelRatio;
  if (from && to) {
    ctx.setLineDash([6 * devicePixelRatio, 4 * devicePixelRatio]);
    ctx.beginPath();
    ctx.moveTo(...at(from.night, from.massG));
    ctx.lineTo(...at(to.night, to.massG));
    ctx.stroke();
  }
  if (more?.target) {
    const { targetG } = more.target;
    const [left, y] = at(more.target.from, targetG);
    const [right] = at(more.target.to, targetG);
    const [likely] = at(more.target.likely, targetG);
    const half = 5 * devicePixelRatio;
    ctx.setLineDash([]);
    ctx.strokeRect(left, y - half, Math.max(2, right - left), 2 * half);
    ctx.beginPath();
    ctx.moveTo(likely, y - half);
    ctx.lineTo(likely, y + half);
    ctx.stroke();
  }
  ctx.restore();
}

/** A tick at the foot of the curve for each meal: whole when eaten, half when not. */
function drawMeals(plot: uPlot, meals: AnimalView['meals'], colour: string): void {
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.strokeStyle = colour;
  ctx.lineWidth = devicePixelRatio;
  for (const { ms, ate } of meals) {
    const x = plot.valToPos(ms / 1000, 'x', true);
    if (x < bbox.left || x > bbox.left + bbox.width) continue;
    const foot = bbox.top + bbox.height;
    ctx.beginPath();
    ctx.moveTo(x, foot);
    ctx.lineTo(x, foot - MEAL_TICK_PX * devicePixelRatio * (ate ? 1 : 0.5));
    ctx.stroke();
  }
  ctx.restore();
}
