import type { AnimalId } from '../core/ids.ts';
import type { GenesBook } from '../genes-book/genes-book.ts';
import { knownParent, tiesBetween } from '../genes-book/known-parent.ts';
import { shareWhere } from '../genes/chances.ts';
import { clutchOdds, type Parent } from '../genes/clutch-odds.ts';
import { ONE, over, type Fraction } from '../genes/fraction.ts';
import { alleleIndex, genotypeOf } from '../genes/genotype.ts';
import { inClutch, neededFor, type Needed } from '../genes/in-clutch.ts';
import type { GeneSex } from '../genes/locus.ts';
import { pairCautions, type PairCaution } from '../genes/pair-cautions.ts';
import { chanceOf, targetCases, type Counted } from '../genes/target-odds.ts';
import type { Target } from '../genes/target.ts';
import type { Goal } from './goal.ts';

export interface ExactPair {
  readonly perClutch: number;
  readonly ifCarrier: number | undefined;
  readonly each: Fraction;
  readonly needed: Needed;
  readonly clutches: number | undefined;
  readonly cautions: readonly PairCaution[];
}

export interface PairAsked {
  readonly goal: Goal;
  readonly target: Target;
  readonly book: GenesBook;
  readonly dam: AnimalId;
  readonly sire: AnimalId;
  /** Hatched young in a clutch. */
  readonly young: number;
  readonly sure: Fraction;
}

const COUNTED: Counted = { of: 'hatchlings' };

/**
 * One pair exactly, on all loci on record. What young or ancestors tie of one parent to the other is
 * kept tied. Of a proof, `needed` is what must hatch to see it, if it is there.
 */
export function exactPair({ goal, target, book, dam, sire, young, sure }: PairAsked): ExactPair {
  const { catalogue } = book;
  const [her, his] = [knownParent(dam, 'female', book), knownParent(sire, 'male', book)];
  const wanted = target.wants.map(({ locus }) => locus);
  const together = tiesBetween(wanted, her, his, { dam, sire }, book);
  const odds = clutchOdds(her, [{ sire: his, weight: ONE }], catalogue, { together });
  const cases = targetCases(odds, target, COUNTED);
  const carrier = goal.kind === 'prove' ? certainCarrier(goal, her, his, dam) : undefined;
  const ifCases = carrier
    ? targetCases(
        clutchOdds(carrier.her, [{ sire: carrier.his, weight: ONE }], catalogue),
        target,
        COUNTED,
      )
    : cases;
  const needed = neededFor(ifCases, sure, 'one');
  return {
    perClutch: inClutch(cases, young).atLeastOne,
    ifCarrier: carrier && inClutch(ifCases, young).atLeastOne,
    each: chanceOf(cases),
    needed,
    clutches: needed.reachable ? Math.ceil(needed.n / young) : undefined,
    cautions: pairCautions(her, his, catalogue),
  };
}

/** The tested one as it would be if it carried the allele; undefined where it cannot. */
function certainCarrier(
  { animal, locus, allele }: Extract<Goal, { kind: 'prove' }>,
  her: Parent,
  his: Parent,
  dam: AnimalId,
): { readonly her: Parent; readonly his: Parent } | undefined {
  const isDam = animal === dam;
  const sex: GeneSex = isDam ? 'female' : 'male';
  const known = (isDam ? her : his).get(locus.id);
  const index = alleleIndex(locus, allele);
  const carries = (genotype: number) => genotypeOf(locus, sex, genotype).includes(index);
  if (!known) return undefined;
  const share = shareWhere(known, carries);
  if (share.n === 0n) return undefined;
  const sure = [...known].filter(([genotype]) => carries(genotype));
  const chances = new Map(sure.map(([genotype, chance]) => [genotype, over(chance, share)]));
  const tested = new Map(isDam ? her : his).set(locus.id, chances);
  return isDam ? { her: tested, his } : { her, his: tested };
}
