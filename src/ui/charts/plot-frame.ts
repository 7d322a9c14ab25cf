import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';

export const token = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim();

/** How the axes of every curve look, in the light of the room. */
export function axisLook() {
  const line = token('--line');
  return {
    stroke: token('--ink-soft'),
    grid: { stroke: line, width: 1 },
    ticks: { stroke: line, width: 1 },
    font: '13px system-ui',
  };
}

/** Puts a plot into a box, as wide as the box is and becomes; returns how to take it away. */
export function mountPlot(
  box: HTMLElement,
  heightPx: number,
  options: Omit<uPlot.Options, 'width' | 'height'>,
  data: uPlot.AlignedData,
): () => void {
  const plot = new uPlot({ ...options, width: box.clientWidth, height: heightPx }, data, box);
  const follow = new ResizeObserver(() =>
    plot.setSize({ width: box.clientWidth, height: heightPx }),
  );
  follow.observe(box);
  return () => {
    follow.disconnect();
    plot.destroy();
  };
}
