import uPlot from 'uplot';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import 'uplot/dist/uPlot.min.css';

const HEIGHT_PX = 220;
const MEAL_TICK_PX = 10;

const token = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim();

/** Draws the curve into a box as wide as the box; returns how to take it away. */
export function drawWeights(
  box: HTMLElement,
  masses: AnimalView['masses'],
  meals: AnimalView['meals'],
): () => void {
  const [ink, line, accent] = [token('--ink-soft'), token('--line'), token('--accent')];
  const axis = {
    stroke: ink,
    grid: { stroke: line, width: 1 },
    ticks: { stroke: line, width: 1 },
    font: '13px system-ui',
  };
  const plot = new uPlot(
    {
      width: box.clientWidth,
      height: HEIGHT_PX,
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
      hooks: { draw: [(drawn) => drawMeals(drawn, meals, ink)] },
    },
    [masses.map(({ ms }) => ms / 1000), masses.map(({ massG }) => massG)],
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
