import { ancestryOf } from './ancestry.ts';
import type { Evidence, Finding } from './evidence.ts';
import { networkOf } from './network.ts';
import type { Pedigree } from './pedigree.ts';
import { smallestFailing } from './smallest-failing.ts';
import { contradicts } from './solve.ts';
import type { ByGenotype, PedigreeModel } from './states.ts';
import type { Contradiction } from './trouble.ts';

/**
 * Which records cannot stand together: first the fewest findings under the priors as they are, then
 * the fewest of the priors behind them. `suspects` are looked through first.
 */
export function conflictIn(
  pedigree: Pedigree,
  model: PedigreeModel,
  { priors, findings }: Evidence,
  suspects: readonly Finding[],
  mostCells: number,
): Pick<Contradiction, 'findings' | 'priors'> {
  const failsWith =
    (part: (findings: readonly Finding[]) => Pedigree) =>
    (some: readonly Finding[], stated = priors): boolean => {
      const within = part(some);
      const known = [...stated].filter(([id]) => within.indexOf.has(id));
      const evidence = { priors: new Map(known), findings: some };
      return contradicts(networkOf(within, model, evidence, mostCells), mostCells);
    };
  const fails = failsWith(() => pedigree);
  const failsOfAncestors = failsWith((some) => ancestryOf(pedigree, some));
  const start = fails(suspects) ? suspects : findings;
  // Ancestors alone are quick to try. That a sibling hatched, and its sex, can be evidence too.
  const rough = smallestFailing(start, (some) => failsOfAncestors(some));
  const clashing = smallestFailing(rough.length > 0 ? rough : start, (some) => fails(some));

  const failsNear = failsOfAncestors(clashing) ? failsOfAncestors : fails;
  const founders = (clashing.length > 0 ? ancestryOf(pedigree, clashing) : pedigree).members
    .filter(({ clutch }) => clutch === undefined)
    .map(({ id }) => id);
  const anything: ByGenotype = {
    female: Array.from({ length: model.genotypes.female }, () => 1),
    male: Array.from({ length: model.genotypes.male }, () => 1),
  };
  const held = smallestFailing(founders, (some) => {
    const loose = founders.filter((id) => !some.includes(id));
    return failsNear(clashing, new Map([...priors, ...loose.map((id) => [id, anything] as const)]));
  });
  return { findings: clashing.map(({ id }) => id), priors: held };
}
