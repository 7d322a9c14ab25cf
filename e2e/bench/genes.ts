import { fileURLToPath } from 'node:url';
import { ballPython } from '../../src/domain/genes/catalogue/ball-python.ts';
import { clutchOdds, type Parent } from '../../src/domain/genes/clutch-odds.ts';
import { fraction, ONE } from '../../src/domain/genes/fraction.ts';
import { inClutch, neededFor } from '../../src/domain/genes/in-clutch.ts';
import type { GeneSex } from '../../src/domain/genes/locus.ts';
import { lookTable } from '../../src/domain/genes/look-table.ts';
import { pairCautions } from '../../src/domain/genes/pair-cautions.ts';
import { genotypesOf, readTraits } from '../../src/domain/genes/read-traits.ts';
import { targetCases } from '../../src/domain/genes/target-odds.ts';
import { atMost, median, print, rounded, type Tell } from './figure.ts';

// How long a pair's odds take, from the keeper's words to the table, on nine loci that all vary.

const RUNS = 60;
const DAM = 'Lesser, Pastel, Spider, Banana, Enchi, 66% het Clown, 50% het Pied, Yellow Belly';
const SIRE =
  'Mojave, Super Pastel, Pinstripe, male maker Banana, Enchi, het Clown, 66% het Pied, Asphalt';

const animal = (text: string, sex: GeneSex): Parent =>
  genotypesOf(readTraits(text, ballPython, sex), sex);

const visuals = {
  wants: [
    { locus: 'clown', look: 'Clown' },
    { locus: 'pied', look: 'Pied' },
    { locus: 'pastel', look: 'Super Pastel' },
    { locus: 'bel', look: 'Mojave/Lesser' },
  ],
};

function times(what: () => void): readonly number[] {
  return Array.from({ length: RUNS }, () => {
    const from = performance.now();
    what();
    return performance.now() - from;
  });
}

/** Odds, the table of looks and the chance of a target, from two parents that are read already. */
function oddsOf(dam: Parent, sire: Parent): void {
  const odds = clutchOdds(dam, [{ sire, weight: ONE }], ballPython);
  const { rows } = lookTable(odds);
  const cases = targetCases(odds, visuals, { of: 'hatchlings' });
  inClutch(cases, 6);
  neededFor(cases, fraction(9, 10), 'one');
  if (rows.length === 0) throw new Error('No looks.');
}

export function geneFigures(tell: Tell): void {
  const dam = animal(DAM, 'female');
  const sire = animal(SIRE, 'male');
  const figures = [
    ['odds, table and a target', times(() => oddsOf(dam, sire)), 50],
    ['cautions of the pair', times(() => pairCautions(dam, sire, ballPython)), 50],
    ['both parents read', times(() => [animal(DAM, 'female'), animal(SIRE, 'male')]), 50],
  ] as const;
  for (const [what, taken, limit] of figures) {
    const name = `genes: ${what}, nine loci`;
    const middle = rounded(median(taken), 2);
    tell({ name: `${name}, median`, value: middle, unit: 'ms', ...atMost(limit, middle) });
    tell({ name: `${name}, the quickest`, value: rounded(Math.min(...taken), 2), unit: 'ms' });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) geneFigures(print);
