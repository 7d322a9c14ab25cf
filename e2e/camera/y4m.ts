import type { Picture } from './picture.ts';

/**
 * A film for Chromium's `--use-file-for-fake-video-capture`, which plays it again and again.
 *
 * Source: https://wiki.multimedia.cx/index.php/YUV4MPEG2 (from memory). Levels run from 16 to 235, as
 * video does, and both colour planes, a quarter of the size each, stay at the 128 of grey.
 *
 * Errors: throws when there is no picture, when one differs in size, and at odd sizes.
 */
export function y4m(pictures: readonly Picture[], perSecond: number): Uint8Array {
  const [first] = pictures;
  if (!first) throw new Error('A film needs a picture.');
  const { width, height } = first;
  if (width % 2 || height % 2)
    throw new Error(`Width and height must be even: ${width}×${height}.`);
  const text = new TextEncoder();
  const parts = [text.encode(`YUV4MPEG2 W${width} H${height} F${perSecond}:1 Ip A1:1 C420jpeg\n`)];
  const colour = new Uint8Array((width * height) / 2).fill(128);
  for (const picture of pictures) {
    if (picture.width !== width || picture.height !== height) {
      throw new Error('All pictures of a film must have one size.');
    }
    const luma = picture.gray.map((level) => 16 + Math.round((level * 219) / 255));
    parts.push(text.encode('FRAME\n'), luma, colour);
  }
  return new Uint8Array(Buffer.concat(parts));
}
