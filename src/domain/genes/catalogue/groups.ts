import type { Locus } from '../locus.ts';
import { geneSources } from './gene-sources.ts';
import {
  agreed,
  disputed,
  dominant,
  group,
  incomplete,
  neverSeen,
  pair,
  published,
  recessive,
  two,
} from './make-locus.ts';

const white = 'white with blue eyes';
const sameLine = 'Butter and Lesser are regarded as one allele from two lines.';

/** Loci at which several visible mutations lie: an animal carries at most two of them. */
export const groups: readonly Locus[] = [
  group(
    'clown',
    'Clown group',
    [
      recessive('clown', 'Clown', { evidence: published(geneSources.mc1r) }),
      incomplete('cryptic', 'Cryptic', {
        remark: 'Breeders hold it for an allele of Clown; no gene is known.',
      }),
    ],
    {
      gene: 'MC1R',
      pairs: [
        pair('clown', 'cryptic', { appearance: 'like Clown' }),
        two('cryptic', { evidence: disputed }),
      ],
    },
  ),
  group(
    'bel',
    'Blue-eyed leucistic group',
    [
      incomplete('mojave', 'Mojave', { aliases: ['Mojo'] }),
      incomplete('lesser', 'Lesser', { aliases: ['Lesser Platinum'], remark: sameLine }),
      incomplete('butter', 'Butter', { remark: sameLine }),
      incomplete('phantom', 'Phantom'),
      incomplete('mystic', 'Mystic'),
      incomplete('russo', 'Russo', { aliases: ['het Russo'] }),
      incomplete('special', 'Special'),
      incomplete('bamboo', 'Bamboo'),
      incomplete('mocha', 'Mocha'),
      incomplete('daddy', 'Daddy', {
        aliases: ['Daddy gene'],
        evidence: disputed,
        remark: 'That it belongs to this group is not settled.',
      }),
    ],
    {
      pairs: [
        two('mojave', { appearance: 'white with blue eyes, a greyish head' }),
        two('lesser', { appearance: white }),
        two('butter', { appearance: white }),
        two('russo', { appearance: white }),
        two('phantom', { appearance: 'dark, reduced pattern' }),
        two('mystic', { appearance: 'pale, not fully white' }),
        two('bamboo', { appearance: 'pale to white' }),
        two('daddy', { evidence: disputed }),
        pair('lesser', 'mojave', { appearance: white }),
        pair('butter', 'mojave', { appearance: white }),
        pair('lesser', 'butter', { appearance: white }),
        pair('mojave', 'phantom', { name: 'Purple Passion' }),
        pair('mojave', 'mystic', { name: 'Mystic Potion' }),
        pair('mojave', 'special', { name: 'Crystal' }),
      ],
    },
  ),
  group(
    'yellow-belly',
    'Yellow Belly group',
    [
      incomplete('yellow-belly', 'Yellow Belly', { aliases: ['Yellowbelly', 'YB'] }),
      incomplete('asphalt', 'Asphalt'),
      incomplete('gravel', 'Gravel'),
      incomplete('spark', 'Spark'),
      incomplete('specter', 'Specter', { aliases: ['Spectre'] }),
    ],
    {
      gene: 'EDNRB (printed as EDNRB1 and as EDNRB2)',
      evidence: { grade: 'trade consensus', sources: [geneSources.trade, geneSources.dao] },
      pairs: [
        two('yellow-belly', { name: 'Ivory', appearance: 'nearly white' }),
        pair('yellow-belly', 'asphalt', { name: 'Freeway' }),
        pair('yellow-belly', 'gravel', { name: 'Highway' }),
        pair('yellow-belly', 'spark', { name: 'Puma' }),
        pair('yellow-belly', 'specter', { name: 'Superstripe', aliases: ['Super Stripe'] }),
      ],
    },
  ),
  group(
    'fire',
    'Black-eyed leucistic group',
    [incomplete('fire', 'Fire'), incomplete('vanilla', 'Vanilla')],
    {
      pairs: [
        two('fire', {
          aliases: ['Black-eyed leucistic', 'BlkEL'],
          appearance: 'white with black eyes',
        }),
        pair('fire', 'vanilla', { name: 'Vanilla Cream' }),
      ],
    },
  ),
  group(
    'cinnamon',
    'Cinnamon and Black Pastel group',
    [
      incomplete('cinnamon', 'Cinnamon', { aliases: ['Cinny'] }),
      incomplete('black-pastel', 'Black Pastel', { aliases: ['Blackpastel'] }),
    ],
    {
      pairs: [
        two('cinnamon', { appearance: 'dark, without pattern' }),
        pair('cinnamon', 'black-pastel', { name: '8-Ball', aliases: ['8ball', 'Eight ball'] }),
      ],
    },
  ),
  group(
    'spider',
    'Spider and Blackhead group',
    [
      dominant('spider', 'Spider'),
      incomplete('blackhead', 'Blackhead', { aliases: ['Black head'] }),
    ],
    {
      pairs: [two('spider', { appearance: 'never confirmed', survival: neverSeen(agreed) })],
    },
  ),
];
