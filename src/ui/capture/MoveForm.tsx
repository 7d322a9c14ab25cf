import { useState } from 'preact/hooks';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import type { FormProps } from './form-props.ts';

const MOST = 12;

/** Moves a snake to another tub, by position. */
export function MoveForm({ occupant, put, onClose }: FormProps) {
  const [typed, setTyped] = useState('');
  const labels = useView('labels', null);
  const wanted = typed.trim().toUpperCase().replace(/\s/g, '');
  const tubs = (labels?.labelled ?? []).filter(
    ({ kind, position }) => kind === 'tub' && position?.startsWith(wanted),
  );
  return (
    <Sheet title={`Move ${occupant.name} to…`} onClose={onClose}>
      <label>
        Position, like B4-2
        <input
          value={typed}
          autocomplete="off"
          autocapitalize="characters"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <div class="two">
        {tubs.slice(0, MOST).map(({ tub, position }) => (
          <Slab
            key={tub}
            onPress={() =>
              tub && put({ type: 'moved', animal: occupant.id, tub }, `moved to ${position ?? ''}`)
            }
          >
            {position}
          </Slab>
        ))}
      </div>
      {tubs.length === 0 && <p class="quiet">No tub at {wanted}.</p>}
    </Sheet>
  );
}
