import type { Day } from '../core/calendar.ts';
import { agoWords } from '../core/day-words.ts';
import type { Stage, Standing } from '../season/standing.ts';

/** Where a snake stands, in a line that opens to what puts it there. */
export interface StageInWords {
  /** The rule behind it is `stageRule` of this. */
  readonly stage: Stage;
  readonly isMale: boolean;
  /** "Building, 31 mm, 4 days ago" */
  readonly words: string;
  readonly because: readonly string[];
}

const stageWords: Readonly<Record<Stage, string>> = {
  growing: 'Growing',
  resting: 'Resting',
  building: 'Building',
  resorbing: 'Perhaps resorbing',
  ovulated: 'Ovulated',
  'pre-lay shed': 'Pre-lay shed',
  laid: 'Laid',
  recovering: 'Recovering',
  ready: 'Ready to pair',
  'in rotation': 'In rotation',
  'off food': 'Off food',
  'losing mass': 'Losing mass',
};

/** Stages that begin on a night that all later dates are counted from. */
const dated: ReadonlySet<Stage> = new Set<Stage>(['ovulated', 'pre-lay shed', 'laid']);

export function stageInWords(standing: Standing, night: Day, isMale: boolean): StageInWords {
  const { stage, since, because, now } = standing;
  const parts = [stageWords[stage]];
  const scan = now?.scan;
  if (dated.has(stage)) {
    if (since) parts.push(agoWords(since, night));
  } else if (scan && ['resting', 'building', 'resorbing'].includes(stage)) {
    const mm = scan.mm === undefined ? 'none seen' : `${scan.mm} mm`;
    parts.push(scan.isFelt && scan.mm !== undefined ? `felt about ${mm}` : mm);
    parts.push(agoWords(scan.night, night));
  }
  return { stage, isMale, words: parts.join(', '), because };
}
