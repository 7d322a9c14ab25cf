import { fileURLToPath } from 'node:url';
import { growing, repeatScans, resorbing, resting } from '../../demo-data/follicle-females.ts';
import { growthTrial, resorbingTrial, shareOf, suggested } from '../../demo-data/follicle-trial.ts';
import { atLeast, atMost, median, print, rounded, type Tell } from './figure.ts';

// How often what is said of follicles comes true, on invented females.

const FEMALES = 2_000;
const seedsTo = (last: number) => Array.from({ length: last }, (_, i) => i + 1);
const seeds = seedsTo(FEMALES);

/** Whole days round outward, so 80 % is a little more. */
const calibrated = (value: number) => ({
  budget: '0.77–0.87',
  ok: value >= 0.77 && value <= 0.87,
});

function tellGrowth(tell: Tell): void {
  const asAssumed = growthTrial(seeds.map((seed) => growing(seed)));
  const shares = [
    ['growth', asAssumed.growth],
    ['size', asAssumed.size],
    ['day of 35 mm', asAssumed.ripe],
  ] as const;
  for (const [what, share] of shares) {
    const value = rounded(shareOf(share), 3);
    const name = `follicles: 80 % interval holds the ${what}, of ${share.of}`;
    tell({ name, value, unit: 'share', ...calibrated(value) });
  }
  for (const [scans, share] of [...asAssumed.ripeByScans].toSorted(([a], [b]) => a - b)) {
    const name = `follicles: 80 % window holds the day of 35 mm, ${scans} scans used, of ${share.of}`;
    tell({ name, value: rounded(shareOf(share), 3), unit: 'share' });
  }
  const days = median(asAssumed.ripeDays);
  tell({ name: 'follicles: 80 % window of 35 mm, median width', value: days, unit: 'days' });
  const said = rounded(shareOf(asAssumed.said), 3);
  tell({ name: 'follicles: trends that say when 35 mm is reached', value: said, unit: 'share' });

  const others = [
    ['error half as large again, not known', 1.5, 0, 0],
    ['error half as large again, 30 repeat scans', 1.5, 0, 30],
    ['error 0.6 times, not known', 0.6, 0, 0],
    ['error 0.6 times, 30 repeat scans', 0.6, 0, 30],
    ['growth that doubles by 45 mm', 1, 1, 0],
  ] as const;
  for (const [what, errorTimes, speedsUp, pairs] of others) {
    const females = seedsTo(FEMALES / 4).map((seed) => growing(seed, errorTimes, speedsUp));
    const { growth, ripe } = growthTrial(females, repeatScans(1, pairs, errorTimes));
    const name = `follicles, ${what}: 80 % interval holds the`;
    tell({ name: `${name} growth`, value: rounded(shareOf(growth), 3), unit: 'share' });
    tell({ name: `${name} day of 35 mm`, value: rounded(shareOf(ripe), 3), unit: 'share' });
  }
}

function tellResorbing(tell: Tell): void {
  const many = seedsTo(10 * FEMALES);
  const wrong = rounded(shareOf(suggested(many.map((seed) => growing(seed)))), 5);
  const steady = 'resorbing: wrongly suggested of steadily growing females, in a season';
  tell({ name: steady, value: wrong, unit: 'share', ...atMost(0.02, wrong) });
  const atRest = rounded(shareOf(suggested(many.map((seed) => resting(seed)))), 5);
  tell({
    name: 'resorbing: suggested of females at rest all season',
    value: atRest,
    unit: 'share',
  });

  const { ever, inTime } = resorbingTrial(seeds.map((seed) => resorbing(seed)));
  const found = rounded(shareOf(inTime), 3);
  const name = 'resorbing: found within four weeks of the second fall';
  tell({ name, value: found, unit: 'share', ...atLeast(0.8, found) });
  tell({ name: 'resorbing: found at all', value: rounded(shareOf(ever), 3), unit: 'share' });
}

/** About a minute. */
export function follicleFigures(tell: Tell): void {
  tellGrowth(tell);
  tellResorbing(tell);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) follicleFigures(print);
