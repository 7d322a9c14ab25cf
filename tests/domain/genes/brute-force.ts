import type { Locus } from '../../../src/domain/genes/locus.ts';

// A second way to the same numbers: every set of parents' genotypes, every gamete of each, every egg,
// one at a time and in floating point, with whole genotypes over all loci at once. It shares nothing
// with the engine but the catalogue's data.

/** Allele ids; of a male's sex-linked locus the one on his X first. */
export type PairOfIds = readonly [string, string];
/** Possible genotypes of an animal at each locus, with parts of a whole. */
export type Maybe = readonly (readonly [parts: number, genotype: PairOfIds])[];
export type AnimalIds = ReadonlyMap<string, Maybe>;

export interface Egg {
  readonly sex: 'female' | 'male';
  readonly genotype: ReadonlyMap<string, PairOfIds>;
  readonly chance: number;
  readonly survival: number;
}

interface Draw<Value> {
  readonly chance: number;
  readonly value: Value;
}

/** All combinations of one choice from each. */
function all<Value>(choices: readonly (readonly Draw<Value>[])[]): Draw<readonly Value[]>[] {
  let found: Draw<readonly Value[]>[] = [{ chance: 1, value: [] }];
  for (const each of choices) {
    found = found.flatMap((so) =>
      each.map((one) => ({ chance: so.chance * one.chance, value: [...so.value, one.value] })),
    );
  }
  return found;
}

const wild: Maybe = [[1, ['+', '+']]];

const drawsOf = (animal: AnimalIds, loci: readonly Locus[]): Draw<readonly PairOfIds[]>[] =>
  all(
    loci.map(({ id }) => {
      const maybe = animal.get(id) ?? wild;
      const total = maybe.reduce((sum, [parts]) => sum + parts, 0);
      return maybe.map(([parts, value]) => ({ chance: parts / total, value }));
    }),
  );

/** What a male gives in a sperm that bears an X or a Y; at a sex-linked locus they may cross over. */
function spermOf(sire: readonly PairOfIds[], loci: readonly Locus[], sex: Egg['sex']) {
  return all(
    loci.map(({ linkage }, n): Draw<string>[] => {
      const [onX = '+', onY = '+'] = sire[n] ?? [];
      if (linkage.kind === 'autosomal') {
        return [
          { chance: 0.5, value: onX },
          { chance: 0.5, value: onY },
        ];
      }
      const r = Number(linkage.recombination.n) / Number(linkage.recombination.d);
      return [
        { chance: sex === 'female' ? 1 - r : r, value: onX },
        { chance: sex === 'female' ? r : 1 - r, value: onY },
      ];
    }),
  );
}

function survives(locus: Locus, [a, b]: PairOfIds): number {
  const pair = locus.pairs.find(
    ({ alleles }) => alleles.toSorted().join(' ') === [a, b].toSorted().join(' '),
  );
  const share = pair?.survival?.share;
  return share ? Number(share.n) / Number(share.d) : 1;
}

/** For every possible pair of parents, its chance and all its eggs. */
export function everyClutch(
  dam: AnimalIds,
  sire: AnimalIds,
  loci: readonly Locus[],
): Draw<readonly Egg[]>[] {
  return drawsOf(dam, loci).flatMap((mother) =>
    drawsOf(sire, loci).map((father) => {
      const ova = all(mother.value.map((pair) => pair.map((value) => ({ chance: 0.5, value }))));
      const eggs = (['female', 'male'] as const).flatMap((sex) =>
        spermOf(father.value, loci, sex).flatMap((sperm) =>
          ova.map((ovum): Egg => {
            const pairs = loci.map(
              (_, n) => [ovum.value[n] ?? '+', sperm.value[n] ?? '+'] as const,
            );
            return {
              sex,
              genotype: new Map(loci.map(({ id }, n) => [id, pairs[n] ?? ['+', '+']])),
              chance: 0.5 * sperm.chance * ovum.chance,
              survival: loci.reduce(
                (share, locus, n) => share * survives(locus, pairs[n] ?? ['+', '+']),
                1,
              ),
            };
          }),
        ),
      );
      return { chance: mother.chance * father.chance, value: eggs };
    }),
  );
}
