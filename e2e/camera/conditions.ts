import type { View } from './frames.ts';
import type { QrOptions } from './print.ts';

/** One way a label can be hard to read. */
export interface Condition {
  readonly name: string;
  readonly qr?: Omit<QrOptions, 'random'>;
  readonly view: View;
}

const sizes = [1.5, 2, 2.5, 3, 4, 6, 8];
const rotations = [5, 15, 30, 45, 90, 135, 180];
const tilts = [20, 35, 50];
const blurs = [1, 1.5, 2];
const contrasts = [0.5, 0.25, 0.15, 0.1];
const noises = [12, 25];
const damages = [0.03, 0.06, 0.1, 0.15];

/** A phone held over a tub in a dim room, in one hand. */
const held: View = { scale: 3, blur: 1, rotation: 12, tilt: 20, contrast: 0.5, noise: 8 };
const hd = { width: 1280, height: 720 };
const percent = (share: number) => `${Math.round(100 * share)} %`;

/** What the decoder is measured on. At 4 pixels for each module unless the name says otherwise. */
export const conditions: readonly Condition[] = [
  ...sizes.map((scale) => ({ name: `${scale} px per module`, view: { scale } })),
  ...rotations.map((rotation) => ({ name: `rotation ${rotation}°`, view: { scale: 4, rotation } })),
  ...tilts.map((tilt) => ({ name: `tilt ${tilt}°`, view: { scale: 4, tilt, rotation: 8 } })),
  ...blurs.map((blur) => ({ name: `blur σ ${blur} px`, view: { scale: 4, blur } })),
  ...contrasts.map((contrast) => ({
    name: `contrast ${percent(contrast)}`,
    view: { scale: 4, contrast },
  })),
  ...noises.map((noise) => ({ name: `noise σ ${noise}`, view: { scale: 4, noise } })),
  ...damages.map((damage) => ({
    name: `damage ${percent(damage)}`,
    qr: { damage },
    view: { scale: 4 },
  })),
  { name: 'glare', view: { scale: 4, glare: 0.8 } },
  { name: 'half in shadow', view: { scale: 4, shadow: 0.6 } },
  { name: 'light on dark', qr: { inverted: true }, view: { scale: 4 } },
  { name: 'quiet zone of 1 module', qr: { quietZone: 1 }, view: { scale: 4 } },
  { name: 'held in the hand', view: held },
  {
    name: 'held, worn and dim',
    qr: { damage: 0.03 },
    view: { ...held, rotation: 25, tilt: 25, contrast: 0.35 },
  },
  { name: '1280×720, 3 px per module', view: { ...hd, scale: 3 } },
  { name: '1280×720, blur σ 1 px', view: { ...hd, scale: 4, blur: 1 } },
  {
    name: '1280×720, 6 px, blur σ 1.5 px, noise 8',
    view: { ...hd, scale: 6, blur: 1.5, noise: 8 },
  },
  { name: '1280×720, held in the hand', view: { ...held, ...hd } },
];
