import type { AnimalId } from '../core/ids.ts';
import type { PairCaution } from '../genes/pair-cautions.ts';
import { closeKin } from '../lineage/close-kin.ts';
import type { Picture } from '../picture/picture.ts';
import { oddsWords } from './chance-words.ts';
import type { KinWords } from './kin-words.ts';

/** Something to know before these two are put together. */
export interface CautionLine {
  readonly id: string;
  readonly weight: string;
  readonly says: string;
  /** "1/4 (25 %) of the young" */
  readonly chance: string;
  /** "published", "trade consensus", "disputed" or "practice" */
  readonly grade: string;
  readonly evidence: readonly string[];
}

export const cautionLine = ({ caution, chance }: PairCaution): CautionLine => ({
  id: caution.id,
  weight: caution.weight,
  says: caution.message,
  chance: `${oddsWords(chance)} ${caution.concerns === 'dam' ? 'that it concerns her' : 'of the young'}`,
  grade: caution.evidence.grade,
  evidence: [
    `Known from: ${caution.evidence.grade}.`,
    ...caution.evidence.sources.map(({ cite }) => cite),
  ],
});

/** Young that would be closely bred ask for a reason as any caution does. */
export const kinCaution = ({ figure, closeness }: KinWords): readonly CautionLine[] =>
  closeness === undefined
    ? []
    : [
        {
          id: 'close-kin',
          weight: closeness === 'very close' ? 'serious' : 'worth knowing',
          says: `These two are ${closeness} kin: ${figure}.`,
          chance: 'all of the young',
          grade: 'practice',
          evidence: [closeKin.source.cite],
        },
      ];

/** The reason given last for putting these two together; undefined where there is none. */
export function reasonFor(
  { female, male }: { readonly female: AnimalId; readonly male: AnimalId },
  { ledger }: Picture,
): string | undefined {
  const given = ledger
    .history(female)
    .findLast(
      (event) =>
        event.type === 'pairing-reasoned' &&
        event.male === male &&
        event.female === female &&
        ledger.stands(event.id),
    );
  return given?.type === 'pairing-reasoned' ? given.reason : undefined;
}
