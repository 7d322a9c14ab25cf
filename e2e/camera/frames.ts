import { blurred } from './blur.ts';
import { eachPixel, type Picture, type Shade } from './picture.ts';
import type { Print } from './print.ts';
import { normal, seeded, type Random } from './random.ts';

/** How a print is held before the camera, and what the camera makes of it. */
export interface View {
  readonly width?: number;
  readonly height?: number;
  /** Camera pixels for each unit of the print, at its centre. */
  readonly scale: number;
  /** Turned in its own plane, in degrees. */
  readonly rotation?: number;
  /** Leaning away about a horizontal axis, in degrees. */
  readonly tilt?: number;
  /** How far the print's centre is from the frame's, in camera pixels. */
  readonly offset?: readonly [x: number, y: number];
  /** Deviation of a Gaussian blur, in camera pixels. */
  readonly blur?: number;
  /** 1 keeps black black and white white; 0.1 leaves a tenth of the distance between them. */
  readonly contrast?: number;
  /** Deviation of the sensor's noise, in grey levels of 255. */
  readonly noise?: number;
  /** Height of a lamp's reflection on the print, 1 being from black to white. */
  readonly glare?: number;
  /** Share of the light that a shadow over half of the print takes away. */
  readonly shadow?: number;
  readonly seed?: number;
}

/** What a camera sees of a print: the same picture for the same view. */
export function cameraFrame(print: Print, view: View): Picture {
  const { width = 640, height = 480, blur = 0, noise = 2, seed = 1 } = view;
  const random = seeded(seed);
  const sharp = eachPixel(width, height, seen(print, view, rackWall(width, height, random)));
  const soft = blur > 0 ? blurred(sharp, width, height, blur) : sharp;
  const light = lighting(print, view);
  const gray = new Uint8Array(width * height);
  for (let y = 0, i = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, i += 1) {
      const level = 255 * light(soft[i] ?? 0, x, y) + noise * normal(random);
      gray[i] = Math.min(255, Math.max(0, Math.round(level)));
    }
  }
  return { width, height, gray };
}

function centre({ width = 640, height = 480, offset = [0, 0] }: View): readonly [number, number] {
  return [width / 2 + offset[0], height / 2 + offset[1]];
}

function lighting(print: Print, view: View): (value: number, x: number, y: number) => number {
  const { contrast = 1, glare = 0, shadow = 0, scale } = view;
  const [cx, cy] = centre(view);
  const size = print.width * scale;
  return (value, x, y) => {
    const shaded = shadow && x - cx > 0.3 * (y - cy) ? 1 - shadow : 1;
    const lamp2 = ((x - cx - size / 5) ** 2 + (y - cy + size / 12) ** 2) / (size / 6) ** 2;
    const shine = glare && glare * Math.exp(-lamp2 / 2);
    return (0.5 + (value - 0.5) * contrast) * shaded + shine;
  };
}

function seen(print: Print, view: View, behind: Shade): Shade {
  const look = pixelToPrint(print, view);
  // Enough samples in each direction that none of the print falls between two of them.
  const samples = Math.min(8, Math.max(3, Math.ceil(1.5 / view.scale) + 1));
  const reach = (Math.hypot(print.width, print.height) / 2) * view.scale * 1.6;
  const [cx, cy] = centre(view);
  return (left, top) => {
    const wall = behind(left, top);
    if (Math.hypot(left - cx, top - cy) > reach) return wall;
    let sum = 0;
    for (let n = 0; n < samples ** 2; n += 1) {
      const x = left + ((n % samples) + 0.5) / samples;
      const y = top + (Math.floor(n / samples) + 0.5) / samples;
      const [s, t] = look(x, y);
      sum += s >= 0 && t >= 0 && s < print.width && t < print.height ? print.at(s, t) : wall;
    }
    return sum / samples ** 2;
  };
}

/**
 * Where on the print a camera pixel looks.
 *
 * A pinhole camera of 1.2 frame widths focal length, about a phone's main camera. A point (s, t) of
 * the print, seen from its centre, stands at C + s·U + t·V in space, with C straight ahead; its pixel
 * is where the line from there to the pinhole meets the sensor. Two linear equations lead back.
 */
function pixelToPrint(
  print: Print,
  view: View,
): (x: number, y: number) => readonly [s: number, t: number] {
  const { width = 640, rotation = 0, tilt = 0, scale } = view;
  const focal = 1.2 * width;
  const [turn, lean] = [(rotation * Math.PI) / 180, (tilt * Math.PI) / 180];
  const inSpace = (x: number, y: number) =>
    [x * scale, y * scale * Math.cos(lean), y * scale * Math.sin(lean)] as const;
  const u = inSpace(Math.cos(turn), Math.sin(turn));
  const v = inSpace(-Math.sin(turn), Math.cos(turn));
  const [cx, cy] = centre(view);
  return (x, y) => {
    const p = (x - cx) / focal;
    const q = (y - cy) / focal;
    const a = u[0] - p * u[2];
    const b = v[0] - p * v[2];
    const c = u[1] - q * u[2];
    const d = v[1] - q * v[2];
    const det = a * d - b * c;
    const s = (focal * (p * d - b * q)) / det;
    const t = (focal * (a * q - p * c)) / det;
    const inFront = s * u[2] + t * v[2] > -focal;
    return inFront ? [s + print.width / 2, t + print.height / 2] : [-1, -1];
  };
}

/** Uneven grey with the edges of tubs in it: something to be distracted by. */
function rackWall(width: number, height: number, random: Random): Shade {
  const shelves = Array.from({ length: 5 }, () => random() * height);
  const posts = Array.from({ length: 3 }, () => random() * width);
  const phase = random() * 6;
  return (x, y) => {
    if (shelves.some((at) => Math.abs(at - y) < 3)) return 0.15;
    if (posts.some((at) => Math.abs(at - x) < 5)) return 0.75;
    return 0.45 + 0.12 * Math.sin(x / 41 + phase) * Math.cos(y / 57) + (0.1 * y) / height;
  };
}
