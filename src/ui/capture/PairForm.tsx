import { useState } from 'preact/hooks';
import type { Hit } from '../../domain/views/find-view.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import type { FormProps } from './form-props.ts';

const MOST = 12;

/** Puts a male in with a female. He goes to her tub, whichever of the two was scanned. */
export function PairForm({ view, occupant, put, onClose }: FormProps) {
  const [typed, setTyped] = useState('');
  const hits = useView('find', typed) ?? [];
  const { fail } = useModel();
  const isMale = occupant.sex === 'male';
  const wanted = isMale ? 'female' : 'male';
  const partners = hits.filter(({ animal, gone, sex }) => animal && !gone && sex === wanted);

  const putTogether = ({ animal: other, title, tub: theirTub }: Hit) => {
    const tub = isMale ? theirTub : view.tub;
    if (other === undefined || tub === undefined) {
      fail('She stands in no tub yet.', 'Give her a tub first.');
      return;
    }
    const pair = isMale
      ? { male: occupant.id, female: other }
      : { male: other, female: occupant.id };
    put({ type: 'introduced', ...pair, tub }, `together with ${title}`);
  };

  return (
    <Sheet title={`${occupant.name} with…`} onClose={onClose}>
      <label>
        Name or position of the {wanted}
        <input
          value={typed}
          autocomplete="off"
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      <div class="stack scroll-list">
        {partners.slice(0, MOST).map((hit) => (
          <Slab key={hit.animal} icon="pair" under={hit.detail} onPress={() => putTogether(hit)}>
            {hit.title}
          </Slab>
        ))}
        {partners.length === 0 && <p class="quiet">No {wanted} by that name.</p>}
      </div>
      <p class="small quiet">
        Not within two days of a meal, not in blue, not in quarantine. A pairing needs two animals
        in good condition.
      </p>
    </Sheet>
  );
}
