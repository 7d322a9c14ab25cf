import { describe, expect, test } from 'vitest';
import { kinshipsIn } from '../../../../src/domain/genes/kinship/kinship.ts';
import type { Kin } from '../../../../src/domain/genes/kinship/lineage.ts';
import { kinOf, lineageOf } from './lineages.ts';

describe('repeated inbreeding', () => {
  // Wright 1921, Genetics 6:111–178; F_t = (1 + 2 F_(t-1) + F_(t-2)) / 4.
  const sibs = [
    0,
    1 / 4,
    3 / 8,
    1 / 2,
    19 / 32,
    43 / 64,
    47 / 64,
    201 / 256,
    423 / 512,
    55 / 64,
    1815 / 2048,
  ];

  const sibLine = (generations: number): readonly Kin[] => {
    const kin: Kin[] = [{ id: 'm0' }, { id: 'f0' }];
    for (let t = 1; t <= generations; t += 1) {
      const parents = { sire: `m${t - 1}`, dam: `f${t - 1}` };
      kin.push({ id: `m${t}`, ...parents }, { id: `f${t}`, ...parents });
    }
    return kin;
  };

  test('full sibs, generation after generation', () => {
    const kinships = kinshipsIn(lineageOf(sibLine(11)));
    sibs.forEach((expected, t) => {
      expect(kinships.inbreeding(`m${t + 1}`).atLeast).toBe(expected);
    });
  });

  test('two hundred generations of it go to 1, and take no time', () => {
    const { atLeast, generations } = kinshipsIn(lineageOf(sibLine(200))).inbreeding('f200');
    expect(atLeast).toBeCloseTo(1, 12);
    expect(generations).toBe(200);
  });

  test('offspring with the younger parent, generation after generation', () => {
    const kin: Kin[] = [{ id: '0' }, { id: '1' }];
    for (let t = 2; t <= 12; t += 1) {
      const [older, younger] = [String(t - 2), String(t - 1)];
      kin.push(
        t % 2 === 0
          ? { id: String(t), sire: older, dam: younger }
          : { id: String(t), sire: younger, dam: older },
      );
    }
    const kinships = kinshipsIn(lineageOf(kin));
    sibs.forEach((expected, t) => {
      expect(kinships.inbreeding(String(t + 2)).atLeast).toBe(expected);
    });
  });

  // F_t = (1/2)(1 - (1/2)^t); with F of the parent: F_t = (1 + F_P)/4 + F_(t-1)/2.
  test('again and again with the same parent', () => {
    const back = (sire: readonly Kin[]): readonly Kin[] => {
      const kin: Kin[] = [...sire, { id: 'b', sex: 'female' }, { id: '0', sire: 'P', dam: 'b' }];
      for (let t = 1; t <= 9; t += 1) kin.push({ id: String(t), sire: 'P', dam: String(t - 1) });
      return kin;
    };
    const plain = kinshipsIn(lineageOf(back([{ id: 'P' }])));
    const values = [
      0,
      1 / 4,
      3 / 8,
      7 / 16,
      15 / 32,
      31 / 64,
      63 / 128,
      127 / 256,
      255 / 512,
      511 / 1024,
    ];
    values.forEach((expected, t) => expect(plain.inbreeding(String(t)).atLeast).toBe(expected));
    const inbred = kinshipsIn(
      lineageOf(
        back(
          kinOf([
            ['m', 'A', 'B'],
            ['f', 'A', 'B'],
            ['P', 'm', 'f'],
          ]),
        ),
      ),
    );
    [0, 5 / 16, 15 / 32, 35 / 64, 75 / 128, 155 / 256].forEach((expected, t) => {
      expect(inbred.inbreeding(String(t)).atLeast).toBe(expected);
    });
  });

  // With alleles apart in half of all young, what fuses is as in selfing: 1/2, 3/4, 7/8 … [Wright 1921].
  test('daughters without a father: half apart is selfing, never apart is wholly inbred', () => {
    const line = (apart: number): readonly Kin[] =>
      Array.from({ length: 7 }, (_, t) => ({
        id: String(t),
        ...(t === 0 ? {} : { dam: String(t - 1), fatherless: { apart } }),
      }));
    const selfing = kinshipsIn(lineageOf(line(0.5)));
    [0, 1 / 2, 3 / 4, 7 / 8, 15 / 16, 31 / 32, 63 / 64].forEach((expected, t) => {
      expect(selfing.inbreeding(String(t)).atLeast).toBe(expected);
    });
    expect(kinshipsIn(lineageOf(line(0))).inbreeding('1').atLeast).toBe(1);
    expect(kinshipsIn(lineageOf(line(1))).inbreeding('6').atLeast).toBe(0);
  });
});
