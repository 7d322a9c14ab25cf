import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

/** Why a snake is bred from below the keeper's own limits. */
export function SmallerForm({
  id,
  name,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const [why, setWhy] = useState('');
  return (
    <Sheet title={`${name}, started smaller`} onClose={onClose}>
      <label>
        Why
        <input
          maxLength={200}
          autocomplete="off"
          value={why}
          onInput={({ currentTarget }) => setWhy(currentTarget.value)}
        />
      </label>
      <Slab
        icon="check"
        kind="main"
        disabled={why.trim() === ''}
        onPress={() =>
          void write({
            drafts: [{ type: 'started-smaller', animal: id, why: why.trim() }],
            words: `${name} started smaller`,
            after: onClose,
          })
        }
      >
        Write
      </Slab>
    </Sheet>
  );
}
