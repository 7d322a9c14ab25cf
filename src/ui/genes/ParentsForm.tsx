import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { SnakePick } from './SnakePick.tsx';

interface Chosen {
  readonly id: AnimalId;
  readonly name: string;
}
const MOST_SIRES = 8;

/** Whose young it is; of several males each may be the father. */
export function ParentsForm({
  id,
  name,
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const view = useView('animal', id);
  const [changed, setChanged] = useState<{ dam: Chosen | undefined; sires: readonly Chosen[] }>();
  if (!view) return null;
  const { dam, sires } = changed ?? { dam: view.dam, sires: view.sires };
  const pick = (who: Chosen, sex: 'female' | 'male') => {
    if (sex === 'female') setChanged({ dam: dam?.id === who.id ? undefined : who, sires });
    else {
      const others = sires.filter((each) => each.id !== who.id);
      setChanged({
        dam,
        sires: others.length < sires.length ? others : [...sires, who].slice(0, MOST_SIRES),
      });
    }
  };
  const said = [dam?.name, ...sires.map((sire) => sire.name)].filter((each) => each !== undefined);
  return (
    <Sheet title={`Parents of ${name}`} onClose={onClose}>
      <p role="status">
        Dam: {dam?.name ?? 'not known'}. Sire:{' '}
        {sires.map((sire) => sire.name).join(' or ') || 'not known'}.
      </p>
      <SnakePick
        label="Name or position; tap again to take one back"
        without={[id]}
        chosen={[...(dam ? [dam.id] : []), ...sires.map((sire) => sire.id)]}
        onPick={(who, { title, sex }) =>
          pick({ id: who, name: title }, sex === 'female' ? 'female' : 'male')
        }
      />
      <p class="quiet small">Two males or more: any of them may be the father.</p>
      <Slab
        icon="check"
        kind="main"
        under={said.join(' × ')}
        disabled={changed === undefined}
        onPress={() =>
          void write({
            drafts: [
              {
                type: 'parents-stated',
                animal: id,
                sires: sires.map((sire) => sire.id),
                ...(dam ? { dam: dam.id } : {}),
              },
            ],
            words: `${name}: parents stated`,
            after: onClose,
          })
        }
      >
        Write
      </Slab>
    </Sheet>
  );
}
