import type { Finding } from './evidence.ts';
import type { Brood, Member, Pedigree } from './pedigree.ts';

/** The part of a pedigree that some findings are about: whom they name, and all ancestors. */
export function ancestryOf(pedigree: Pedigree, findings: readonly Finding[]): Pedigree {
  const { members, clutches, indexOf } = pedigree;
  const [animals, broods] = [new Set<number>(), new Set<number>()];
  const addClutch = (index: number): void => {
    const brood = clutches[index];
    if (!brood || broods.has(index)) return;
    broods.add(index);
    for (const parent of parentsIn(brood)) addAnimal(parent);
  };
  const addAnimal = (index: number): void => {
    if (animals.has(index)) return;
    animals.add(index);
    const { clutch } = members[index] ?? {};
    if (clutch !== undefined) addClutch(clutch);
  };
  for (const finding of findings) {
    if (finding.kind === 'young') addClutch(clutches.findIndex(({ id }) => id === finding.clutch));
    else addAnimal(indexOf.get(finding.animal) ?? -1);
  }
  const [newAnimal, newClutch] = [placeOf(animals), placeOf(broods)];
  const kept = members.filter((_, index) => animals.has(index));
  return {
    members: kept.map(({ clutch, ...member }): Member => {
      const index = clutch === undefined ? undefined : newClutch.get(clutch);
      return index === undefined ? member : { ...member, clutch: index };
    }),
    clutches: clutches
      .filter((_, index) => broods.has(index))
      .map((brood): Brood => ({
        ...brood,
        dam: newAnimal.get(brood.dam) ?? 0,
        fathers: brood.fathers.map(({ sire, weight }) =>
          sire === undefined ? { weight } : { sire: newAnimal.get(sire) ?? 0, weight },
        ),
      })),
    indexOf: new Map(kept.map(({ id }, index) => [id, index])),
  };
}

export const parentsIn = ({ dam, fathers }: Brood): readonly number[] => [
  dam,
  ...fathers.flatMap(({ sire }) => (sire === undefined ? [] : [sire])),
];

const placeOf = (kept: ReadonlySet<number>): ReadonlyMap<number, number> =>
  new Map([...kept].toSorted((a, b) => a - b).map((old, place) => [old, place]));
