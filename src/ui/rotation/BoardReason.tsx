import type { MateCell } from '../../domain/views/mates-view.ts';
import type { BoardRow } from '../../domain/views/rotation-view.ts';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useDraft, useModel } from '../model.ts';

/** What keeps two out of every plan, until the keeper says why they shall meet all the same. */
export function BoardReason({
  cell,
  female,
}: {
  readonly cell: MateCell;
  readonly female: BoardRow;
}) {
  const { write } = useModel();
  const [reason, setReason] = useDraft(`reason.${cell.male}.${female.id}`);
  const keep = () =>
    void write({
      drafts: [
        {
          type: 'pairing-reasoned',
          male: cell.male,
          female: female.id,
          cautions: cell.asked.map(({ id }) => id).slice(0, 24),
          reason: reason.trim(),
        },
      ],
      words: `Reason kept for ${cell.name} and ${female.name}`,
      after: () => setReason(''),
    });
  return (
    <div class="caution">
      <p>
        <b>Not planned without your reason.</b>
      </p>
      {cell.missing.map(({ id, says }) => (
        <p class="small" key={id}>
          {says}
        </p>
      ))}
      <Unfolds summary="Plan them for a reason">
        {() => (
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
        )}
      </Unfolds>
    </div>
  );
}
