import { buildingSigns, healthSystems } from '../../domain/core/trade-words.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import type { IconName } from '../components/Icon.tsx';
import { takenOut } from './drafts.ts';
import type { FormName } from './form-props.ts';

/** One choice of a rare record, and what it writes. */
export interface Choice {
  readonly words: string;
  readonly draft: Draft;
}

/** A rarer kind of record: choices to tap, or a line to write. Data, drawn by one form. */
export interface RareRecord {
  readonly title: string;
  readonly icon: IconName;
  readonly caution?: string | undefined;
  /** The caution leaves it to a vet: the keeper's own is named with it. */
  readonly vet?: true;
  readonly choices?: readonly Choice[] | undefined;
  /** It has a form of its own. */
  readonly form?: FormName;
  /** A line of text becomes this draft. */
  readonly write?: ((text: string) => Draft) | undefined;
  readonly prompt?: string | undefined;
}

const severities = [
  [1, 'slight'],
  [2, 'clear'],
  [3, 'grave'],
] as const;

/** The rarer records that make sense for whoever is in this tub, the likelier first. */
export function rareRecords(view: CaptureView, occupant: Occupant): readonly RareRecord[] {
  const { id: animal } = occupant;
  return [
    ...pairRecords(view),
    {
      title: 'In blue',
      icon: 'blue',
      choices: [{ words: 'in blue', draft: { type: 'opaque-seen', animal } }],
    },
    {
      title: 'Brought up a meal',
      icon: 'undo',
      caution:
        'No food and no handling for two weeks. Twice in 60 days, or with weight loss: a vet.',
      vet: true,
      choices: ([1, 2, 3, 5] as const).map((afterDays) => ({
        words: `brought up its meal after ${afterDays === 1 ? '1 day' : `${afterDays} days`}`,
        draft: { type: 'regurgitated', animal, afterDays },
      })),
    },
    ...(occupant.sex === 'male' ? [] : femaleRecords(occupant)),
    {
      title: 'Faeces',
      icon: 'check',
      choices: (['faeces', 'urates', 'both', 'abnormal'] as const).map((what) => ({
        words: what,
        draft: { type: 'faeces-seen', animal, what },
      })),
    },
    ...tubRecords(view),
    {
      title: 'Condition',
      icon: 'weigh',
      choices: (
        [
          [1, 'very thin: spine stands up'],
          [2, 'thin: triangular'],
          [3, 'good: round, firm'],
          [4, 'heavy: soft sides'],
          [5, 'very fat: folds at the tail'],
        ] as const
      ).map(([score, words]) => ({ words, draft: { type: 'condition-judged', animal, score } })),
    },
    {
      title: 'Health note',
      icon: 'alarm',
      caution:
        'Open-mouth breathing, bubbles, a prolapse, stalled laying: to a reptile vet within a day or two, at once if it is weak.',
      vet: true,
      choices: healthSystems.flatMap((system) =>
        severities.map(([severity, word]) => ({
          words: `${system}, ${word}`,
          draft: { type: 'health-noted', animal, system, severity } as const,
        })),
      ),
    },
    { title: 'Picture', icon: 'camera', form: 'picture' },
    { title: 'DNA result', icon: 'find', form: 'gene-test' },
    {
      title: 'Note',
      icon: 'more',
      prompt: 'Anything, in a line',
      write: (text) => ({ type: 'noted', animal, text }),
    },
    {
      title: 'Quarantine',
      icon: 'quarantine',
      choices: occupant.quarantine
        ? [{ words: 'quarantine ended', draft: { type: 'quarantine-ended', animal } }]
        : [{ words: 'quarantine started', draft: { type: 'quarantine-started', animal } }],
    },
    {
      title: 'Gone',
      icon: 'out',
      caution: 'Its history stays. Before a sale, check local rules and papers.',
      choices: (['sold', 'given', 'lent', 'returned', 'died', 'escaped'] as const).map((how) => ({
        words: how,
        draft: { type: 'left', animal, how },
      })),
    },
    ...occupant.chores
      .filter(({ blocked }) => blocked === undefined)
      .map((chore): RareRecord => ({
        title: `Pass over: ${chore.asks}`,
        icon: 'hold',
        prompt: 'Why',
        write: (reason) => ({ type: 'passed-over', animal, rule: chore.rule, reason }),
      })),
  ];
}

function pairRecords({ pair }: CaptureView): readonly RareRecord[] {
  if (!pair) return [];
  const { male, female } = pair;
  return [
    {
      title: 'Look at the pair',
      icon: 'pair',
      choices: (['locked', 'courting', 'apart', 'ignoring', 'fighting'] as const).map((seen) => ({
        words: seen,
        draft: { type: 'pair-seen', male, female, seen },
      })),
    },
    {
      title: 'Take him out',
      icon: 'out',
      choices: [{ words: 'taken out', draft: takenOut(pair) }],
    },
  ];
}

function femaleRecords({ id: animal, season }: Occupant): readonly RareRecord[] {
  const nestBox = season?.nestBoxIsIn ? 'out' : 'in';
  return [
    {
      title: 'Sign',
      icon: 'follicles',
      choices: buildingSigns.map((sign) => ({
        words: `sign: ${sign}`,
        draft: { type: 'sign-seen', animal, sign },
      })),
    },
    { title: 'Ovulation', icon: 'look', form: 'ovulation' },
    { title: 'Eggs', icon: 'eggs', form: 'eggs' },
    { title: 'Young, counted', icon: 'eggs', form: 'young' },
    {
      title: 'Looked, nothing yet',
      icon: 'look',
      choices: (['ovulation', 'eggs'] as const).map((lookedFor) => ({
        words: `looked for ${lookedFor}: nothing yet`,
        draft: { type: 'nothing-yet', animal, lookedFor },
      })),
    },
    {
      title: `Nest box ${nestBox}`,
      icon: 'nest',
      choices: [
        { words: `nest box ${nestBox}`, draft: { type: 'nest-box-set', animal, is: nestBox } },
      ],
    },
    ...(season?.isOpen ? [seasonEnd(animal)] : []),
  ];
}

/** Its records stay; what is seen next begins a new season. */
const seasonEnd = (animal: Occupant['id']): RareRecord => ({
  title: 'End her season',
  icon: 'hold',
  choices: (['resorbed', 'no ovulation', 'year off', 'recovered'] as const).map((why) => ({
    words: `season over: ${why}`,
    draft: { type: 'season-closed', animal, why },
  })),
});

function tubRecords({ tub }: CaptureView): readonly RareRecord[] {
  if (tub === undefined) return [];
  return [
    {
      title: 'Clean',
      icon: 'check',
      choices: (['spot', 'full'] as const).map((how) => ({
        words: `${how} clean`,
        draft: { type: 'tub-cleaned', tub, how },
      })),
    },
    {
      title: 'Water',
      icon: 'check',
      choices: (['changed', 'tipped', 'dry'] as const).map((state) => ({
        words: `water ${state}`,
        draft: { type: 'water-seen', tub, state },
      })),
    },
  ];
}
