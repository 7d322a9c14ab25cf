import type { AnimalId, ClutchId } from '../src/domain/core/ids.ts';
import type { GeneSex } from '../src/domain/genes/locus.ts';
import type { Casting } from './cast.ts';
import { bornOf, calledAfter, genesCalled, lookWords, type Genes } from './heredity.ts';
import { chanceFrom, type Chance } from './random.ts';
import type { Nursery, Parents, Snake } from './world.ts';

/** A clutch in the incubator. */
interface Clutch {
  readonly id: ClutchId;
  readonly dam: Snake;
  /** Every male that was in with her; the first is the father. */
  readonly sires: readonly Snake[];
  readonly hatchesOn: number;
  /** Eggs not yet spoken for. */
  left: number;
}

// Eggs hatch after 55 to 62 days [common practice, no source].
const INCUBATION = 58;
/** A young is given to the clutch that hatched within so many nights. */
const WITHIN = 12;
const SEASON_NIGHTS = 250;
const FIRST_SHEDS = 20;

const geneSex = ({ sex }: Casting): GeneSex => (sex === 'male' ? 'male' : 'female');

const called = ({ casting }: Snake) => ({ text: casting.traits, sex: geneSex(casting) });

/** With a chance of its own, so that the rest of the story does not hang on it. */
export function openNursery(seed: number): Nursery {
  const chance: Chance = chanceFrom(seed + 1);
  const visits = new Map<Snake, { male: Snake; night: number }[]>();
  const genes = new Map<AnimalId, Genes>();
  const clutches: Clutch[] = [];

  const genesOf = ({ id, casting }: Snake): Genes => {
    const known = genes.get(id) ?? genesCalled(casting.traits, geneSex(casting), chance);
    genes.set(id, known);
    return known;
  };

  function parentsOf(hatchedOn: number, snakes: readonly Snake[]): Parents | undefined {
    const away = ({ hatchesOn }: Clutch): number => Math.abs(hatchesOn - hatchedOn);
    const [clutch] = clutches
      .filter((each) => each.left > 1 && each.sires.length > 0 && away(each) <= WITHIN)
      .toSorted((a, b) => away(a) - away(b));
    if (clutch) {
      clutch.left -= 1;
      return clutch;
    }
    // From eggs that were laid before the records begin, or elsewhere.
    const females = snakes.filter(({ casting }) => casting.role === 'female');
    const males = snakes.filter(({ casting }) => casting.role === 'male');
    const dam = females[chance.whole(0, females.length - 1)];
    const sire = males[chance.whole(0, males.length - 1)];
    return dam && sire && { dam, sires: [sire] };
  }

  const child = ({ dam, sires }: Parents, sex: GeneSex): Genes => {
    const [sire] = sires;
    return sire ? bornOf(genesOf(dam), genesOf(sire), sex, chance) : genesOf(dam);
  };

  return {
    genesOf,
    met(female, male, night) {
      visits.set(female, [...(visits.get(female) ?? []), { male, night }]);
    },
    isNews(female, male, since) {
      const before = visits.get(female) ?? [];
      return before.filter((visit) => visit.male === male && visit.night >= since).length === 1;
    },
    laid(dam, id, goodEggs, night) {
      const males = (visits.get(dam) ?? [])
        .filter((visit) => night - visit.night < SEASON_NIGHTS)
        .map(({ male }) => male);
      const hatchesOn = night + INCUBATION + chance.whole(-3, 4);
      clutches.push({ id, dam, sires: [...new Set(males)], hatchesOn, left: goodEggs });
    },
    born(casting, { snakes }) {
      const parents = parentsOf(casting.hatchedOn, snakes);
      if (!parents) return undefined;
      const sex = geneSex(casting);
      const carried = child(parents, sex);
      const traits = calledAfter(carried, sex, called(parents.dam), parents.sires.map(called));
      return { parents, genes: carried, traits };
    },
    named: (id, born) => void genes.set(id, born.genes),
    count({ book, night }) {
      for (const clutch of clutches) {
        if (night !== clutch.hatchesOn + FIRST_SHEDS) continue;
        // Now and then one does not hatch.
        const hatched = clutch.left - (chance.happens(0.3) ? 1 : 0);
        const counts = new Map<string, number>();
        for (let n = 0; n < hatched; n += 1) {
          const looks = lookWords(child(clutch, 'female'), 'female');
          counts.set(looks, (counts.get(looks) ?? 0) + 1);
        }
        if (counts.size === 0) continue;
        const { id, dam, sires } = clutch;
        const fathers = sires.map((sire) => ({ male: sire.id }));
        book.write({
          type: 'young-counted',
          animal: dam.id,
          clutch: id,
          sires: fathers.length > 0 ? fathers : [{ male: 'unknown' }],
          counts: [...counts].map(([looks, count]) => ({ looks, count })),
          remark: 'All shed. These go to the spring show.',
        });
      }
    },
  };
}
