import { useState } from 'preact/hooks';
import type { Prey } from '../../domain/events/feeding.ts';
import type { KnownSize } from '../../domain/protocol/prey-sizes.ts';
import { sizeName } from '../../domain/views/prey-words.ts';
import { Icon } from '../components/Icon.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { showMass } from '../mass-unit.ts';

const kinds: readonly Prey['kind'][] = [
  'rat',
  'mouse',
  'soft-furred rat',
  'gerbil',
  'chick',
  'other',
];

interface Edited {
  readonly kind: Prey['kind'];
  readonly size: string;
  readonly eachG: string;
  readonly isNew: boolean;
}

/** What one piece of each size weighs at the keeper's own supplier: meals are planned by it. */
export function SizeTable({ sizes }: { readonly sizes: readonly KnownSize[] }) {
  const [edited, setEdited] = useState<Edited>();
  return (
    <section class="stack">
      <h2>Your sizes</h2>
      <p class="small quiet">
        Suppliers differ: weigh a few. Meals are planned and reckoned by these weights.
      </p>
      <ul class="plain-list">
        {sizes.map(({ kind, size, eachG, isOwn }) => (
          <li key={sizeName({ kind, size })}>
            <button
              type="button"
              class="meal-line"
              onClick={() => setEdited({ kind, size, eachG: String(eachG), isNew: false })}
            >
              <span class="stop-who">
                <strong>{sizeName({ kind, size })}</strong>
                <span class="small quiet">{isOwn ? 'yours' : 'as usual'}</span>
              </span>
              <span class="number">{showMass(eachG)}</span>
            </button>
          </li>
        ))}
      </ul>
      <button
        type="button"
        class="pill"
        onClick={() => setEdited({ kind: 'rat', size: '', eachG: '', isNew: true })}
      >
        <Icon name="add" /> Another size
      </button>
      {edited && <SizeForm edited={edited} onClose={() => setEdited(undefined)} />}
    </section>
  );
}

const MOST_G = 400;

function SizeForm({ edited, onClose }: { readonly edited: Edited; readonly onClose: () => void }) {
  const { write } = useModel();
  const [now, setNow] = useState(edited);
  const size = now.size.trim();
  const eachG = Number(now.eachG.replace(',', '.'));
  const isWhole = size !== '' && eachG > 0 && eachG <= MOST_G;
  const name = sizeName({ kind: now.kind, size });
  const save = (grams: number | null) =>
    void write({
      drafts: [{ type: 'prey-size-stated', kind: now.kind, size, eachG: grams }],
      words: grams === null ? `${name}: no longer bought` : `One ${name}: ${showMass(grams)}`,
      after: onClose,
    });
  return (
    <Sheet title={edited.isNew ? 'Another size' : name} onClose={onClose}>
      {edited.isNew && (
        <>
          <label>
            Prey
            <select
              value={now.kind}
              onChange={({ currentTarget }) =>
                setNow({ ...now, kind: currentTarget.value as Prey['kind'] })
              }
            >
              {kinds.map((kind) => (
                <option key={kind} value={kind}>
                  {kind}
                </option>
              ))}
            </select>
          </label>
          <label>
            Size, as your supplier calls it
            <input
              maxLength={20}
              autocomplete="off"
              value={now.size}
              onInput={({ currentTarget }) => setNow({ ...now, size: currentTarget.value })}
            />
          </label>
        </>
      )}
      <label>
        Grams of one piece
        <input
          inputMode="decimal"
          autocomplete="off"
          value={now.eachG}
          onInput={({ currentTarget }) => setNow({ ...now, eachG: currentTarget.value })}
        />
      </label>
      <Slab icon="check" kind="main" disabled={!isWhole} onPress={() => save(eachG)}>
        {isWhole ? `Write ${showMass(eachG)}` : 'Write'}
      </Slab>
      {!edited.isNew && (
        <button type="button" class="pill" onClick={() => save(null)}>
          I no longer buy it
        </button>
      )}
    </Sheet>
  );
}
