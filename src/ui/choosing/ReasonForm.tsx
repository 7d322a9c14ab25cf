import type { NamedKin } from '../../domain/views/lineage-view.ts';
import { Slab } from '../components/Slab.tsx';
import { useDraft, useModel } from '../model.ts';
import { ReasonField } from './ReasonField.tsx';

export interface CautionedPair {
  readonly male: Pick<NamedKin, 'id' | 'name'>;
  readonly female: Pick<NamedKin, 'id' | 'name'>;
  /** What the reason is given against. */
  readonly cautions: readonly { readonly id: string }[];
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
      <ReasonField reason={reason} onReason={setReason} />
      <Slab icon="check" disabled={reason.trim() === ''} onPress={keep}>
        Keep this reason
      </Slab>
    </div>
  );
}
