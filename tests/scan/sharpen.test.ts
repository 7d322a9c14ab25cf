import { describe, expect, test } from 'vitest';
import { ATTEMPTS, attemptAfter } from '../../src/scan/decoder/attempts.ts';
import { sharpen, type Pixels } from '../../src/scan/decoder/sharpen.ts';

const gray = (width: number, levels: readonly number[]): Pixels => ({
  width,
  height: levels.length / width,
  data: Uint8ClampedArray.from(levels.flatMap((level) => [level, level, level, 255])),
});
const levelsOf = ({ data }: Pixels): number[] => Array.from(data).filter((_, i) => i % 4 === 0);

describe('sharpening', () => {
  test('drives a pixel away from its neighbours', () => {
    const picture = gray(3, [0, 80, 0, 80, 100, 80, 0, 80, 0]);
    sharpen(picture, 1, 1);
    // 100 + 1 · (100 − 80) in the middle, the rim as it was.
    expect(levelsOf(picture)).toEqual([0, 80, 0, 80, 120, 80, 0, 80, 0]);
  });

  test('stays within black and white', () => {
    const picture = gray(3, [0, 20, 0, 20, 250, 20, 0, 20, 0]);
    sharpen(picture, 1, 2);
    expect(levelsOf(picture)[4]).toBe(255);
  });

  test('leaves an even surface alone, and a picture smaller than its reach', () => {
    const flat = Array.from({ length: 25 }, () => 90);
    const even = gray(5, flat);
    sharpen(even, 2, 2);
    expect(levelsOf(even)).toEqual(flat);
    const tiny = gray(1, [7]);
    sharpen(tiny, 3, 2);
    expect(levelsOf(tiny)).toEqual([7]);
  });
});

describe('attempts', () => {
  test('begin with the plain one, and begin again after the last', () => {
    expect(attemptAfter(0)).toEqual({});
    expect(attemptAfter(ATTEMPTS.length)).toEqual({});
    expect(attemptAfter(ATTEMPTS.length - 1)).toBe(ATTEMPTS.at(-1));
  });
});
