import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { NamedKin } from '../../domain/views/lineage-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { SnakePick } from './SnakePick.tsx';

export type Sire = AnimalId | 'unknown';

const MOST_SIRES = 8;

/** Who may be the father: the males that were in with her, any other, and one nobody knows. */
export function SirePills({
  met,
  sires,
  onSires,
}: {
  readonly met: readonly NamedKin[];
  readonly sires: readonly Sire[];
  readonly onSires: (sires: readonly Sire[]) => void;
}) {
  const [others, setOthers] = useState<readonly Pick<NamedKin, 'id' | 'name'>[]>([]);
  const shown = [...met, ...others.filter(({ id }) => !met.some((each) => each.id === id))];
  const toggle = (sire: Sire) =>
    onSires(
      sires.includes(sire)
        ? sires.filter((each) => each !== sire)
        : [...sires, sire].slice(0, MOST_SIRES),
    );
  return (
    <>
      <div class="chips" role="group" aria-label="Who may be the father">
        {shown.map(({ id, name }) => (
          <button
            type="button"
            class="pill"
            key={id}
            aria-pressed={sires.includes(id)}
            onClick={() => toggle(id)}
          >
            {name}
          </button>
        ))}
        <button
          type="button"
          class="pill"
          aria-pressed={sires.includes('unknown')}
          onClick={() => toggle('unknown')}
        >
          A male not known
        </button>
      </div>
      <Unfolds summary="Another male">
        {() => (
          <SnakePick
            label="Name or position of the male"
            sex="male"
            without={[]}
            chosen={sires.filter((each): each is AnimalId => each !== 'unknown')}
            onPick={(id, { title }) => {
              setOthers([...others, { id, name: title }]);
              toggle(id);
            }}
          />
        )}
      </Unfolds>
    </>
  );
}
