/** A grey picture, row by row from the top left, 0 black to 255 white. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly gray: Uint8Array;
}

/** The brightness at a pixel, 0 black to 1 white. */
export type Shade = (x: number, y: number) => number;

export function eachPixel(width: number, height: number, shade: Shade): Float32Array {
  const light = new Float32Array(width * height);
  for (let y = 0, i = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, i += 1) light[i] = shade(x, y);
  }
  return light;
}
