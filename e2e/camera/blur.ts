import { eachPixel } from './picture.ts';

const inside = (i: number, size: number) => Math.min(size - 1, Math.max(0, i));

/** A Gaussian blur, first along the rows and then down the columns. Unit of sigma: pixels. */
export function blurred(
  light: Float32Array,
  width: number,
  height: number,
  sigma: number,
): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Float32Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma ** 2)),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mixed = (at: (n: number) => number) => {
    let sum = 0;
    for (let n = -reach; n <= reach; n += 1) sum += (weights[n + reach] ?? 0) * at(n);
    return sum / total;
  };
  const rows = eachPixel(width, height, (x, y) =>
    mixed((n) => light[y * width + inside(x + n, width)] ?? 0),
  );
  return eachPixel(width, height, (x, y) =>
    mixed((n) => rows[inside(y + n, height) * width + x] ?? 0),
  );
}
