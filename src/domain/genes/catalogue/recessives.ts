import type { Locus } from '../locus.ts';
import { geneSources } from './gene-sources.ts';
import { agreed, alone, disputed, group, pair, published, recessive } from './make-locus.ts';

const mayBeOne = 'Candy and Toffee may be one and the same allele.';
const ownLine = 'Crossed with another line it gives double hets and no visuals, breeders say.';

/** Mutations hidden in one copy. */
export const recessives: readonly Locus[] = [
  group(
    'tyr',
    'Albino group',
    [
      recessive('albino', 'Albino', {
        aliases: ['T- Albino', 'Amelanistic', 'Amel'],
        evidence: published(geneSources.brown),
        remark: 'Albino eyes are sensitive to light.',
      }),
      recessive('candy', 'Candy', { remark: mayBeOne }),
      recessive('toffee', 'Toffee', { remark: mayBeOne }),
    ],
    {
      gene: 'TYR',
      evidence: agreed,
      pairs: [
        pair('albino', 'candy', { name: 'Candino' }),
        pair('albino', 'toffee', { name: 'Toffino' }),
      ],
    },
  ),
  alone(
    recessive('lavender', 'Lavender Albino', {
      aliases: ['Lavender'],
      evidence: published(geneSources.brown),
    }),
    { gene: 'OCA2' },
  ),
  alone(
    recessive('ultramel', 'Ultramel', {
      evidence: published(geneSources.brown),
      remark: 'Two variants are reported, so lines may meet as two different ones.',
    }),
    { gene: 'TYRP1' },
  ),
  alone(
    recessive('caramel', 'Caramel Albino', {
      aliases: ['Caramel', 'T+ Albino'],
      remark: 'How it relates to Ultramel is not settled; a locus of its own is assumed.',
    }),
  ),
  alone(
    recessive('pied', 'Pied', { aliases: ['Piebald'], evidence: published(geneSources.tfec) }),
    { gene: 'TFEC' },
  ),
  alone(
    recessive('axanthic-gch2', 'Axanthic gch2', {
      aliases: ['gch2 Axanthic', 'gch2'],
      evidence: published(geneSources.gch2),
      remark: 'Probably the VPI line, which is kept apart here until that is known.',
    }),
    { gene: 'GCH2' },
  ),
  alone(
    recessive('axanthic-vpi', 'Axanthic VPI', {
      aliases: ['VPI Axanthic', 'VPI'],
      remark: ownLine,
    }),
  ),
  alone(
    recessive('axanthic-tsk', 'Axanthic TSK', {
      aliases: ['TSK Axanthic', 'TSK'],
      remark: ownLine,
    }),
  ),
  alone(
    recessive('axanthic-jolliff', 'Axanthic Jolliff', {
      aliases: ['Jolliff Axanthic', 'Jolliff'],
      remark: ownLine,
    }),
  ),
  alone(
    recessive('axanthic-mj', 'Axanthic MJ', {
      aliases: ['MJ Axanthic', 'MJ', 'Black Axanthic'],
      remark: 'Whether it is compatible with other lines is not settled.',
    }),
  ),
  alone(
    recessive('ghost', 'Ghost', {
      aliases: ['Hypo', 'Orange Ghost', 'Orange Hypo'],
      evidence: published(geneSources.mlph),
      remark: 'Other lines sold as hypo are not necessarily this gene.',
    }),
    { gene: 'MLPH' },
  ),
  ...(
    [
      ['genetic-stripe', 'Genetic Stripe', ['G Stripe', 'GStripe']],
      ['desert-ghost', 'Desert Ghost', ['DG']],
      ['tri-stripe', 'Tri-Stripe', ['Tristripe']],
      ['monsoon', 'Monsoon', []],
      ['sunset', 'Sunset', []],
      ['puzzle', 'Puzzle', []],
    ] as const
  ).map(([id, name, aliases]) => alone(recessive(id, name, { aliases }))),
  ...(
    [
      ['rainbow', 'Rainbow'],
      ['whitewash', 'Whitewash'],
    ] as const
  ).map(([id, name]) =>
    alone(
      recessive(id, name, { evidence: disputed, remark: 'Said to be recessive; not verified.' }),
    ),
  ),
];
