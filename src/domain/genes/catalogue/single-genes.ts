import type { Locus } from '../locus.ts';
import { geneSources } from './gene-sources.ts';
import {
  agreed,
  alone,
  disputed,
  dominant,
  incomplete,
  neverSeen,
  published,
  tenth,
  two,
} from './make-locus.ts';

const plain = [
  ['pastel', 'Pastel'],
  ['enchi', 'Enchi'],
  ['leopard', 'Leopard'],
  ['ghi', 'GHI'],
  ['orange-dream', 'Orange Dream', 'OD'],
  ['mahogany', 'Mahogany'],
] as const;

const unverified = [
  ['disco', 'Disco', 'Said by some to belong to the black-eyed leucistic group.'],
  ['thunder', 'Thunder', 'Said by some to belong to the black-eyed leucistic group.'],
  ['sulfur', 'Sulfur', 'Said by some to belong to the black-eyed leucistic group.'],
  ['acid', 'Acid', 'Incomplete dominant or dominant: not settled.'],
  ['black-lace', 'Black Lace', 'How it is inherited was not verified.'],
  ['red-stripe', 'Red Stripe', 'How it is inherited was not verified.'],
  ['bongo', 'Bongo', 'How it is inherited was not verified.'],
  ['trick', 'Trick', 'How it is inherited was not verified.'],
  ['java', 'Java', 'How it is inherited was not verified.'],
  ['static', 'Static', 'How it is inherited was not verified.'],
] as const;

const partlyKnown = (id: string, name: string, remark: string): Locus =>
  alone(incomplete(id, name, { evidence: disputed, remark }), { evidence: disputed });

/** Visible mutations that have a locus to themselves, as far as is known. */
export const singleGenes: readonly Locus[] = [
  ...plain.map(([id, name, ...aliases]) => alone(incomplete(id, name, { aliases }))),
  alone(
    incomplete('scaleless', 'Scaleless Head', { aliases: ['het Scaleless', 'het Scaleless Head'] }),
    {
      pairs: [two('scaleless', { name: 'Scaleless', appearance: 'without scales' })],
    },
  ),
  alone(
    incomplete('red-axanthic', 'Het Red Axanthic', {
      aliases: ['HRA'],
      evidence: disputed,
      remark: 'Said by some to be an allele of Cinnamon and Black Pastel; kept apart here.',
    }),
    { pairs: [two('red-axanthic', { name: 'Red Axanthic', evidence: disputed })] },
  ),
  alone(dominant('pinstripe', 'Pinstripe', { aliases: ['Pin'] })),
  alone(
    incomplete('hidden-gene-woma', 'Hidden Gene Woma', {
      aliases: ['HGW'],
      remark: 'Whether it is one locus with Woma is disputed.',
    }),
    {
      pairs: [
        two('hidden-gene-woma', {
          name: 'Pearl',
          appearance: 'dies at or soon after hatching',
          survival: neverSeen(agreed),
        }),
      ],
    },
  ),
  alone(
    dominant('woma', 'Woma', {
      evidence: disputed,
      remark: 'Incomplete dominant or dominant, and apart from Hidden Gene Woma or not: disputed.',
    }),
  ),
  alone(incomplete('champagne', 'Champagne', { aliases: ['Champ'] }), {
    pairs: [two('champagne', { appearance: 'not viable', survival: neverSeen(agreed) })],
  }),
  alone(incomplete('spotnose', 'Spotnose', { aliases: ['Spot nose'] }), {
    pairs: [two('spotnose', { name: 'Powerball', aliases: ['Power ball'] })],
  }),
  alone(
    incomplete('sable', 'Sable', {
      remark: 'Whether it is an allele of Chocolate is not settled.',
    }),
  ),
  alone(dominant('desert', 'Desert')),
  alone(
    incomplete('banana', 'Banana', {
      aliases: ['Coral Glow', 'CG'],
      evidence: published(geneSources.mallery),
      remark: 'Banana and Coral Glow are the same gene, breeders agree.',
    }),
    {
      evidence: published(geneSources.mallery, geneSources.gamble),
      linkage: {
        kind: 'sex-linked',
        recombination: tenth,
        evidence: { grade: 'disputed', sources: [geneSources.crossover] },
      },
    },
  ),
  alone(
    dominant('calico', 'Calico', { aliases: ['Sugar'], remark: 'Two copies are not described.' }),
  ),
  alone(incomplete('chocolate', 'Chocolate')),
  partlyKnown('blade', 'Blade', 'Not agreed.'),
  partlyKnown('confusion', 'Confusion', 'Not agreed.'),
  ...unverified.map(([id, name, remark]) =>
    alone(dominant(id, name, { evidence: disputed, remark }), { evidence: disputed }),
  ),
];
