import type { CautionLine } from '../../domain/views/caution-words.ts';
import type { NamedKin } from '../../domain/views/lineage-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useDraft, useModel } from '../model.ts';

export interface CautionedPair {
  readonly male: Pick<NamedKin, 'id' | 'name'>;
  readonly female: Pick<NamedKin, 'id' | 'name'>;
  readonly cautions: readonly CautionLine[];
}

/** Why these two, in spite of it: asked for and kept, and never in the way. */
export function ReasonForm({ pair: { male, female, cautions } }: { readonly pair: CautionedPair }) {
  const { write } = useModel();
  const [reason, setReason] = useDraft(`reason.${male.id}.${female.id}`);
  const keep = () =>
    void write({
      drafts: [
        {
          type: 'pairing-reasoned',
          male: male.id,
          female: female.id,
          cautions: cautions.map(({ id }) => id).slice(0, 24),
          reason: reason.trim(),
        },
      ],
      words: `Reason kept for ${male.name} and ${female.name}`,
      after: () => setReason(''),
    });
  return (
    <div class="stack">
      <label>
        Why these two, in spite of it?
        <input
          value={reason}
          maxLength={300}
          autocomplete="off"
          onInput={({ currentTarget }) => setReason(currentTarget.value)}
        />
      </label>
      <Slab icon="check" disabled={reason.trim() === ''} onPress={keep}>
        Keep this reason
      </Slab>
    </div>
  );
}
