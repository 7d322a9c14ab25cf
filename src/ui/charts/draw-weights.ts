import type uPlot from 'uplot';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import { axisLook, mountPlot, token } from './plot-frame.ts';

const HEIGHT_PX = 220;
const MEAL_TICK_PX = 10;

/** Draws the curve into a box as wide as the box; returns how to take it away. */
export function drawWeights(
  box: HTMLElement,
  masses: AnimalView['masses'],
  meals: AnimalView['meals'],
): () => void {
  const accent = token('--accent');
  const axis = axisLook();
  return mountPlot(
    box,
    HEIGHT_PX,
    {
      legend: { show: false },
      cursor: { show: false },
      scales: { x: { time: true } },
      axes: [
        { ...axis, space: 70 },
        { ...axis, size: 62, values: (_plot, grams) => grams.map((g) => `${g} g`) },
      ],
      series: [
        {},
        { stroke: accent, width: 2, points: { show: true, size: 7, fill: accent, stroke: accent } },
      ],
      hooks: { draw: [(drawn) => drawMeals(drawn, meals, axis.stroke)] },
    },
    [masses.map(({ ms }) => ms / 1000), masses.map(({ massG }) => massG)],
  );
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
