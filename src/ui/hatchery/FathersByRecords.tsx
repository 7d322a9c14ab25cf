import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel } from '../model.ts';
import { fathersDrafts } from './FathersForm.tsx';

/** Nobody has stated the fathers: whom the records point at and why, and one tap to state it so. */
export function FathersByRecords({ view }: { readonly view: ClutchView }) {
  const { write } = useModel();
  const likely = view.offers.filter(({ isLikely }) => isLikely);
  if (view.fathers.isStated || likely.length === 0) return null;
  const names = likely.map(({ name }) => name).join(' or ');
  const state = () =>
    void write({
      drafts: fathersDrafts(
        view,
        likely.map(({ male, grounds }) => ({ male, grounds })),
      ),
      words: `Fathers: ${names}`,
    });
  return (
    <section class="note" aria-label="Fathers by the records">
      <p>
        By the records: <strong>{names}</strong>
      </p>
      <Unfolds summary="Why">
        {() => (
          <ul class="small">
            {view.offers.map(({ male, says }) => (
              <li key={male}>{says}</li>
            ))}
            <li>
              A visit without a lock counts too. A male of the season before counts where this one
              had none.
            </li>
          </ul>
        )}
      </Unfolds>
      <Slab icon="male" onPress={state} under="can be changed later, as after a DNA test">
        State it so
      </Slab>
    </section>
  );
}
