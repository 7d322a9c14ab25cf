import { aWeightStory, type WeightStory } from './weight-story.ts';

// Masses and meals in grams and sheds of captive ball pythons in 2010. Source: Laarhoven B. & Kooijman S.A.L.M.
// 2010, Add-my-Pet collection, entry Python_regius (individual data: B. Laarhoven, pers. comm. 2010).
// Transcribed. `04-10 321 38`: on 10 April, 321 g, and 38 g eaten; a dash where it was not weighed.
// Snake 06 had laid four eggs of 472 g together by 06-06. 209 g of snake 12 cannot be true. Sheds of July
// without a date are left out.

const table = [
  {
    snake: '01',
    sex: 'female',
    hatched: '2009-07-15',
    of2010: `
      04-10 321 38 | 04-30 shed | 05-01 323 | 05-16 - 27 | 05-21 - 34 | 05-28 - 55 | 06-11 358 |
      06-19 - 25 | 07-02 387 24 | 08-01 383 30 | 08-15 - 69 | 08-29 414 | 09-18 - 54 | 10-01 463 |
      10-23 - 75 | 11-13 459 | 12-03 451
    `,
  },
  {
    snake: '02',
    sex: 'female',
    hatched: '2009-07-15',
    of2010: `
      04-10 346 | 05-01 340 | 05-21 - 34 | 05-28 - 55 | 06-06 shed | 06-11 368 | 06-19 - 78 |
      06-27 - 35 | 07-02 444 | 08-01 411 | 08-04 - 42 | 08-29 454 | 09-16 shed | 09-19 - 54 |
      10-01 465 57 | 10-06 shed | 10-23 - 75 | 10-29 - 100 | 11-03 - 47 | 11-13 631 | 11-14 shed |
      12-03 558 90
    `,
  },
  {
    snake: '03',
    sex: 'female',
    hatched: '2009-07-15',
    of2010: `
      04-10 516 | 04-18 - 39 | 04-24 - 39 | 05-01 555 | 05-08 - 56 | 05-19 shed | 05-22 - 56 |
      05-29 - 113 | 06-04 - 88 | 06-11 689 | 06-19 - 67 | 06-25 - 60 | 06-30 shed | 07-02 700 62 |
      08-01 704 | 08-04 - 39 | 08-08 - 33 | 08-13 - 76 | 08-22 - 115 | 08-27 - 107 | 08-29 815 |
      09-10 - 113 | 09-18 - 199 | 10-01 985 | 10-02 shed | 10-06 shed | 10-15 - 150 | 11-01 - 178 |
      11-13 1054 | 12-03 1036
    `,
  },
  {
    snake: '04',
    sex: 'male',
    hatched: '2009-06-15',
    of2010: `
      04-10 378 | 05-01 352 | 05-08 - 41 | 05-28 - 56 | 06-04 - 54 | 06-11 456 | 06-11 shed |
      06-12 - 54 | 06-27 - 35 | 07-02 447 | 08-01 410 61 | 08-08 - 33 | 08-15 - 72 | 08-22 - 97 |
      08-29 577 | 09-19 - 86 | 10-01 521 65 | 10-15 - 54 | 10-26 shed | 11-13 523 77 | 12-03 526 77
    `,
  },
  {
    snake: '05',
    sex: 'male',
    hatched: '2009-06-15',
    of2010: `
      04-10 700 | 04-19 - 39 | 04-19 shed | 04-24 - 56 | 05-01 692 37 | 05-08 - 126 | 05-25 shed |
      05-29 - 189 | 06-04 - 82 | 06-11 827 | 06-12 - 90 | 06-18 - 56 | 06-25 - 56 | 07-02 918 75 |
      08-01 875 111 | 08-13 - 115 | 08-29 1000 | 08-29 shed | 09-02 - 160 | 09-10 - 100 |
      09-18 - 150 | 10-01 1049 142 | 10-20 shed | 11-13 1050 169 | 12-03 1109 118
    `,
  },
  {
    snake: '06',
    sex: 'female',
    hatched: '2006-07-15',
    of2010: `
      04-10 1735 | 04-21 shed | 05-01 1674 | 05-29 1645 | 06-06 1247 | 06-11 1227 | 06-12 - 120 |
      06-18 - 205 | 06-25 - 133 | 06-25 shed | 07-02 1424 | 08-01 1325 199 | 08-15 - 72 | 08-23 shed
      | 08-27 - 285 | 08-29 1425 | 09-18 - 350 | 10-01 1529 277 | 10-14 shed | 10-15 - 332 |
      11-01 - 310 | 11-13 1870 | 12-03 1864 120
    `,
  },
  {
    snake: '07',
    sex: 'female',
    hatched: '2008-07-15',
    of2010: `
      04-10 1007 | 04-13 shed | 04-18 - 111 | 04-24 - 109 | 05-01 1107 107 | 05-15 - 142 |
      05-29 shed | 06-06 - 124 | 06-07 - 95 | 06-11 1168 | 06-18 - 130 | 07-02 1185 | 08-01 1163 210
      | 08-13 - 176 | 08-22 - 76 | 08-27 - 209 | 08-29 1349 | 09-11 shed | 09-18 - 235 | 10-01 1416
      | 11-01 - 267 | 11-13 1583 | 12-03 1530 224
    `,
  },
  {
    snake: '08',
    sex: 'male',
    hatched: '2006-07-15',
    of2010: `
      04-10 1342 | 05-01 1365 | 05-22 - 176 | 06-05 shed | 06-11 1321 | 06-19 - 183 | 06-25 - 160 |
      07-02 1469 | 08-01 1405 199 | 08-13 - 154 | 08-27 - 280 | 08-29 1531 | 09-17 shed |
      10-01 1515 242 | 11-09 shed | 11-13 1554 253 | 12-03 1676 270
    `,
  },
  {
    snake: '10',
    sex: 'female',
    hatched: '2010-08-06',
    of2010: `
      08-06 80 | 10-01 69 | 10-10 - 38 | 10-29 - 20 | 11-03 - 35 | 11-12 - 20 | 11-13 95 |
      11-17 - 52
    `,
  },
  {
    snake: '11',
    sex: 'unknown',
    hatched: '2010-08-06',
    of2010: `
      08-06 82 | 09-05 - 24 | 09-18 - 40 | 10-01 112 | 10-08 - 26 | 11-03 - 47 | 11-09 shed |
      11-12 - 20 | 11-13 181 | 11-17 - 32 | 12-03 214 34
    `,
  },
  {
    snake: '12',
    sex: 'female',
    hatched: '2010-08-06',
    of2010: `
      08-06 88 | 09-05 - 24 | 09-18 - 40 | 10-01 111 | 10-15 - 38 | 10-24 209 | 11-13 125
    `,
  },
  {
    snake: '13',
    sex: 'female',
    hatched: '2007-08-15',
    of2010: `
      09-06 1376 | 10-01 1303 | 11-01 - 172 | 11-13 1421 | 12-03 1393
    `,
  },
] as const;

interface Snake {
  readonly snake: string;
  readonly sex: 'male' | 'female' | 'unknown';
  readonly hatched: string;
  readonly masses: readonly (readonly [date: string, massG: number])[];
  readonly meals: readonly (readonly [date: string, massG: number])[];
  readonly sheds: readonly string[];
}

export const openRecord: readonly Snake[] = table.map(({ of2010, ...snake }) => {
  const rows = of2010.split('|').map((row) => row.trim().split(' '));
  const dated = (column: number) =>
    rows.flatMap(([date = '', ...cells]): (readonly [string, number])[] => {
      const massG = Number(cells[column]);
      return massG > 0 ? [[`2010-${date}`, massG]] : [];
    });
  const sheds = rows.filter(([, what]) => what === 'shed').map(([date = '']) => `2010-${date}`);
  return { ...snake, masses: dated(0), meals: dated(1), sheds };
});

/** One snake of it, as our records would hold it. On one day, it was weighed before it ate. */
export function fromOpenRecord(name: string): WeightStory {
  const snake = openRecord.find((each) => each.snake === name);
  if (!snake) throw new Error(`There is no snake ${name} in the open record.`);
  return aWeightStory({
    ...snake,
    layings: name === '06' ? [{ date: '2010-06-06', clutchMassG: 472 }] : [],
  });
}
