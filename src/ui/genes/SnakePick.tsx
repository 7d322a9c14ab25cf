import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { Hit } from '../../domain/views/find-view.ts';
import { SexMark } from '../components/SexMark.tsx';
import { Slab } from '../components/Slab.tsx';
import { useView } from '../model.ts';

const MOST = 8;

/** Picks snakes by name or position, those that are gone too: they may be parents. */
export function SnakePick({
  label,
  sex,
  without,
  chosen = [],
  onPick,
}: {
  readonly label: string;
  readonly sex?: 'female' | 'male' | undefined;
  readonly without: readonly AnimalId[];
  readonly chosen?: readonly AnimalId[];
  readonly onPick: (id: AnimalId, hit: Hit) => void;
}) {
  const [typed, setTyped] = useState('');
  const hits = useView('find', typed) ?? [];
  const fit = hits.filter(
    (hit) =>
      hit.animal !== undefined &&
      !without.includes(hit.animal) &&
      (sex === undefined ? hit.sex !== 'unknown' : hit.sex === sex),
  );
  return (
    <>
      <label>
        {label}
        <input
          value={typed}
          autocomplete="off"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <div class="stack scroll-list">
        {fit.slice(0, MOST).map((hit) => (
          <Slab
            key={hit.animal}
            under={hit.detail}
            pressed={chosen.length > 0 && hit.animal ? chosen.includes(hit.animal) : undefined}
            onPress={() => hit.animal && onPick(hit.animal, hit)}
          >
            {hit.title} {hit.sex && <SexMark sex={hit.sex} />}
          </Slab>
        ))}
        {fit.length === 0 && <p class="quiet">None by that name.</p>}
      </div>
    </>
  );
}
