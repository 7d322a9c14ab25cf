import type { PairLine } from '../../domain/views/choose-view.ts';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useDraft, useModel } from '../model.ts';

/** What to know before these two are put together. It blocks nothing: it asks for a reason, and keeps it. */
export function PairCautions({ pair }: { readonly pair: PairLine }) {
  if (pair.cautions.length === 0) return null;
  return (
    <div class="pair-cautions">
      {pair.cautions.map(({ id, weight, says, chance, evidence }) => (
        <div key={id}>
          <p class="small">
            <b>{weight}</b>: {says}
          </p>
          <Unfolds summary={chance}>
            {() => (
              <div class="because">
                {evidence.map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </div>
            )}
          </Unfolds>
        </div>
      ))}
      {pair.reasoned !== undefined && <p class="small">Your reason: {pair.reasoned}</p>}
      <Unfolds summary={pair.reasoned === undefined ? 'Pair them for a reason' : 'Another reason'}>
        {() => <ReasonForm pair={pair} />}
      </Unfolds>
    </div>
  );
}

function ReasonForm({ pair: { male, female, cautions } }: { readonly pair: PairLine }) {
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
