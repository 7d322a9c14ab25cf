import type { ClutchOdds } from './clutch-odds.ts';
import { genotypeOf, WILD } from './genotype.ts';
import { pairOf } from './inheritance.ts';
import type { Allele, Evidence, GeneSex, Locus } from './locus.ts';
import { alleleAt } from './look.ts';

/** A statement that a clutch's odds rest on, and how well it is known. */
export interface Ground {
  readonly locus: string;
  readonly statement: string;
  readonly evidence: Evidence;
}

const sexes: readonly GeneSex[] = ['female', 'male'];

/** What was taken for true of the genes that this pair can pass on, in the catalogue's order. */
export function groundsOf(odds: ClutchOdds): readonly Ground[] {
  return odds.catalogue.loci.flatMap((locus) => {
    const pairs = odds.ways
      .flatMap(({ crosses }) => crosses.filter((cross) => cross.locus.id === locus.id))
      .flatMap(({ cases }) => cases.flatMap(({ broods }) => broods))
      .flatMap((brood) =>
        sexes.flatMap((sex) => [...brood[sex].keys()].map((n) => genotypeOf(locus, sex, n))),
      );
    const alleles = [...new Set(pairs.flat())]
      .filter((allele) => allele !== WILD)
      .toSorted((a, b) => a - b)
      .map((allele) => alleleAt(locus, allele));
    if (alleles.length === 0) return [];
    const ground = (statement: string, evidence: Evidence): Ground => ({
      locus: locus.id,
      statement,
      evidence,
    });
    return [
      ...alleles.map((allele) => ground(modeOf(allele), allele.evidence)),
      ...(alleles.length > 1 ? [ground(oneLocus(locus, alleles), locus.evidence)] : []),
      ...linkageGrounds(locus).map(([statement, evidence]) => ground(statement, evidence)),
      ...lossesOf(locus, pairs).map(([statement, evidence]) => ground(statement, evidence)),
    ];
  });
}

const modeOf = ({ name, mode, remark }: Allele): string =>
  [`${name} is ${mode}.`, ...(remark === undefined ? [] : [remark])].join(' ');

const oneLocus = ({ gene }: Locus, alleles: readonly Allele[]): string => {
  const names = alleles.map(({ name }) => name).join(', ');
  return `${names} are of one locus${gene === undefined ? '' : ` (${gene})`}: two at most in one snake.`;
};

function linkageGrounds({ name, linkage, evidence }: Locus): readonly [string, Evidence][] {
  if (linkage.kind === 'autosomal') return [];
  const { n, d } = linkage.recombination;
  return [
    [`${name} lies on the X and the Y.`, evidence],
    [`It crosses between a male’s X and Y in ${n} of ${d} young.`, linkage.evidence],
  ];
}

function lossesOf(
  locus: Locus,
  pairs: readonly (readonly [number, number])[],
): readonly [string, Evidence][] {
  const found = new Set(pairs.map(([a, b]) => pairOf(locus, a, b)));
  return [...found].flatMap((pair): readonly [string, Evidence][] => {
    if (!pair?.survival) return [];
    const [a, b] = pair.alleles.map(
      (id) => locus.alleles.find((allele) => allele.id === id)?.name ?? id,
    );
    const who = a === b ? `Two copies of ${a}` : `${a} with ${b}`;
    const { share, evidence } = pair.survival;
    const fate =
      share.n === 0n ? 'were never seen to live' : `hatch at ${share.n}/${share.d} of the rate`;
    return [[`${who} ${fate}.`, evidence]];
  });
}
