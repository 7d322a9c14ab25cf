import { fileURLToPath } from 'node:url';
import { runIncubationTrial, type IncubationTrial } from '../../demo-data/incubation-trial.ts';
import { defaultProtocol } from '../../src/domain/protocol/values.ts';
import { median, print, rounded, type Tell } from './figure.ts';

// How often the window of the first pip holds, in incubators that drift, swing and fail, with eggs of
// another family than the forecast assumes.

const KEEPERS = 2_000;

type Varied = Pick<IncubationTrial, 'reads' | 'ownCycles'> & Partial<IncubationTrial>;

function tellTrial(name: string, varied: Varied, tell: Tell): void {
  const outcomes = runIncubationTrial({
    protocol: defaultProtocol,
    keepers: KEEPERS,
    seed: 4 + varied.ownCycles,
    askedOn: 35,
    femaleShare: defaultProtocol.windowFemaleShare,
    ...varied,
  });
  const held = rounded((100 * outcomes.filter(({ isHeld }) => isHeld).length) / KEEPERS, 1);
  const told = `pips: read ${varied.reads}, ${varied.ownCycles} own clutches${name}`;
  const isWithin = held >= 77 && held <= 87;
  tell({ name: `${told}: held`, value: held, unit: '%', budget: '77–87', ok: isWithin });
  const width = median(outcomes.map((each) => each.width));
  tell({ name: `${told}: median width`, value: width, unit: 'days' });
}

/** About a minute. */
export function pipFigures(tell: Tell): void {
  for (const reads of ['by hand, twice a day', 'by a sensor with gaps', 'never'] as const) {
    for (const ownCycles of [0, 3, 10]) tellTrial('', { reads, ownCycles }, tell);
  }
  // Where females do not differ, though the windows allow for it.
  const alike = { reads: 'never', ownCycles: 10, femaleShare: 0 } as const;
  tellTrial(', females all alike', alike, tell);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) pipFigures(print);
