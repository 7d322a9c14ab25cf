import type { FemaleStage, MaleStage, Standing } from '../season/standing.ts';
import type { SourceId } from '../sources.ts';

interface StageRule {
  /** What puts a snake in this stage. */
  readonly says: string;
  readonly source: SourceId;
}

const females: Readonly<Record<FemaleStage, StageRule>> = {
  growing: { says: 'Lighter or younger than you breed from.', source: 'readySize' },
  resting: {
    says: 'No follicles large enough to pair at the last scan, and no two kinds of fresh signs.',
    source: 'follicleStages',
  },
  building: {
    says: 'Follicles large enough to pair at the last scan, or two kinds of fresh signs.',
    source: 'pairFrom',
  },
  resorbing: {
    says: 'Two smaller scans, two weeks apart, by more than a scan is off. Only a suggestion.',
    source: 'resorbing',
  },
  ovulated: {
    says: 'Ovulation on record, or egg-like lumps felt, and no pre-lay shed yet.',
    source: 'ovulationLook',
  },
  'pre-lay shed': {
    says: 'A shed that you called pre-lay, or one in the right days after ovulation.',
    source: 'preLayShed',
  },
  laid: { says: 'Eggs on record, and no meal eaten since.', source: 'recovery' },
  recovering: {
    says: 'Eats again after eggs, and is not yet back at her mass before the season.',
    source: 'recovery',
  },
};

const males: Readonly<Record<MaleStage, StageRule>> = {
  growing: { says: 'Lighter or younger than you breed from.', source: 'readySize' },
  ready: { says: 'Grown, eating, and on no visit lately.', source: 'readySize' },
  'in rotation': { says: 'On a visit, or rested since the last one.', source: 'maleStay' },
  resting: {
    says: 'Had a visit and has not rested for as long as you give him.',
    source: 'maleStay',
  },
  'off food': { says: 'Refused three times in a row.', source: 'household' },
  'losing mass': {
    says: 'Down on his mass before the season by what you watch.',
    source: 'maleLoss',
  },
};

/** The rule behind a stage in words, and where it comes from. */
export function stageRule(
  { stage }: Pick<Standing, 'stage'>,
  isMale: boolean,
): { readonly says: string; readonly source: SourceId | undefined } {
  const rules: Readonly<Partial<Record<string, StageRule>>> = isMale ? males : females;
  const rule = rules[stage];
  return { says: rule?.says ?? '', source: rule?.source };
}
