import type { Caution } from '../caution.ts';
import type { Evidence } from '../locus.ts';
import type { Want } from '../target.ts';
import { geneSources } from './gene-sources.ts';
import { agreed, disputed } from './make-locus.ts';

const one = (locus: string, carries = locus): Want => ({ locus, carries });
const two = (locus: string, carries = locus): Want => ({ locus, carries, copies: 2 });

const wobbleStudies: Evidence = {
  grade: 'published',
  sources: [geneSources.rose, geneSources.starck],
};

/** Traits whose carriers wobble, some or all of them. */
const wobblers = [
  ['spider', 'Spider'],
  ['champagne', 'Champagne'],
  ['hidden-gene-woma', 'Hidden Gene Woma'],
  ['woma', 'Woma'],
  ['spotnose', 'Spotnose'],
  ['sable', 'Sable'],
] as const;

/** Pairs of them that breeders name as the worst. */
const namedWorst = new Set([
  'spider champagne',
  'champagne hidden-gene-woma',
  'spider hidden-gene-woma',
  'spider sable',
]);

const twoWobbles = wobblers.flatMap(([first, firstName], n) =>
  wobblers.slice(n + 1).map(([second, secondName]): Caution => {
    const worst = namedWorst.has(`${first} ${second}`);
    return {
      id: `${first}-with-${second}`,
      concerns: 'young',
      wants: [one(first), one(second)],
      weight: worst ? 'grave' : 'serious',
      message: worst
        ? `Young with both ${firstName} and ${secondName} are reported to die or to be badly affected.`
        : `${firstName} and ${secondName} both bring a wobble; how badly young with both fare is disputed.`,
      evidence: worst ? agreed : disputed,
    };
  }),
);

const young = (
  id: string,
  wants: readonly Want[],
  weight: Caution['weight'],
  message: string,
  evidence: Evidence = agreed,
): Caution => ({ id, concerns: 'young', wants, weight, message, evidence });

const duckBill = 'are reported with a duck-billed face and kinked spines more often than others.';
const bugEyes = 'often have large, protruding eyes.';

/** What is worth knowing before two animals are put together. */
export const cautions: readonly Caution[] = [
  young(
    'spider-twice',
    [two('spider')],
    'grave',
    'Young with two copies of Spider were never confirmed alive: those eggs are lost.',
  ),
  young(
    'hidden-gene-woma-twice',
    [two('hidden-gene-woma')],
    'grave',
    'Young with two copies of Hidden Gene Woma (Pearl) die at or soon after hatching.',
  ),
  young(
    'champagne-twice',
    [two('champagne')],
    'grave',
    'Young with two copies of Champagne do not live.',
  ),
  {
    id: 'desert-mother',
    concerns: 'dam',
    wants: [one('desert')],
    weight: 'grave',
    message:
      'Desert females do not breed successfully: eggs are infertile or not passed. Only males are bred.',
    evidence: agreed,
  },
  ...twoWobbles,
  young(
    'spider-wobble',
    [one('spider')],
    'serious',
    'Every Spider wobbles to some degree: the inner ear is malformed.',
    wobbleStudies,
  ),
  young(
    'hidden-gene-woma-wobble',
    [one('hidden-gene-woma')],
    'serious',
    'Hidden Gene Woma brings a wobble.',
  ),
  young('champagne-wobble', [one('champagne')], 'serious', 'Champagne brings a wobble.'),
  young('woma-wobble', [one('woma')], 'serious', 'A wobble is reported in Woma.'),
  young('spotnose-twice', [two('spotnose')], 'serious', 'Super Spotnose brings a wobble.'),
  young('sable-twice', [two('sable')], 'serious', 'A wobble is reported in Super Sable.', disputed),
  young('cinnamon-twice', [two('cinnamon')], 'serious', `Super Cinnamons ${duckBill}`),
  young(
    'black-pastel-twice',
    [two('cinnamon', 'black-pastel')],
    'serious',
    `Super Black Pastels ${duckBill}`,
  ),
  young(
    'eight-ball',
    [one('cinnamon', 'cinnamon'), one('cinnamon', 'black-pastel')],
    'serious',
    `8-Balls ${duckBill}`,
  ),
  young('caramel-kinks', [two('caramel')], 'serious', 'Caramel Albinos kink at a raised rate.'),
  {
    id: 'caramel-mother',
    concerns: 'dam',
    wants: [two('caramel')],
    weight: 'serious',
    message: 'Caramel Albino females are said to be less fertile.',
    evidence: agreed,
  },
  young(
    'scaleless-twice',
    [two('scaleless')],
    'serious',
    'Scaleless snakes dry out and are hurt more easily, and shed badly.',
  ),
  young('lesser-twice', [two('bel', 'lesser')], 'worth knowing', `Super Lessers ${bugEyes}`),
  young('butter-twice', [two('bel', 'butter')], 'worth knowing', `Super Butters ${bugEyes}`),
  young(
    'lesser-butter',
    [one('bel', 'lesser'), one('bel', 'butter')],
    'worth knowing',
    `Lesser/Butter young ${bugEyes}`,
  ),
  young(
    'banana-twice',
    [two('banana')],
    'worth knowing',
    'Slower growth and lower fertility are claimed of Super Bananas.',
    disputed,
  ),
  young(
    'spider-blackhead',
    [one('spider', 'spider'), one('spider', 'blackhead')],
    'worth knowing',
    'Young with Spider and Blackhead are said to wobble less than other Spiders.',
    disputed,
  ),
  young(
    'albino-eyes',
    [two('tyr', 'albino')],
    'worth knowing',
    'Albino eyes are sensitive to light.',
  ),
  ...['lesser', 'butter'].map((allele) =>
    young(
      `pied-${allele}-twice`,
      [two('pied'), two('bel', allele)],
      'worth knowing',
      'Small or missing eyes are reported in Pied with blue-eyed leucistic genes.',
      disputed,
    ),
  ),
];
