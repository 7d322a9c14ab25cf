import { useState } from 'preact/hooks';
import { eggTroubles } from '../../domain/core/trade-words.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { ClutchView } from '../../domain/views/clutch-view.ts';
import { stepped, Stepper } from '../capture/Stepper.tsx';
import { useFields } from '../capture/use-fields.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { CallVet } from '../screens/CallVet.tsx';
import { meaningOf, type EggTrouble } from './trouble-words.ts';

const kinds = [
  ['good', 'Good now'],
  ['unsure', 'Unsure now'],
  ['slugs', 'Slugs found'],
  ['dead', 'Dead found'],
] as const;
const MOST = 20;
const states = ['good', 'unsure', 'slug', 'dead'] as const;
const LETTERS = 'ABCDEFGHIJKLMNOPQRST';

/** The state after one more tap: the last one is followed by none. */
const next = (before: string | undefined): string | undefined =>
  states[before === undefined ? 0 : states.findIndex((state) => state === before) + 1];

/** A look at the eggs: counts, or egg by egg, and what seems wrong. */
export function CheckForm({
  view,
  onClose,
}: {
  readonly view: ClutchView;
  readonly onClose: () => void;
}) {
  const model = useModel();
  const [fields, change, forget] = useFields(`check.${view.id}`);
  const [how, setHow] = useState<'candled' | 'looked'>(view.day < 30 ? 'candled' : 'looked');
  const [isByEgg, setIsByEgg] = useState(false);
  const [troubles, setTroubles] = useState<readonly EggTrouble[]>([]);
  const numberOf = (name: string) =>
    fields[name] === undefined ? undefined : Number(fields[name]);
  const letters = LETTERS.split('').slice(0, Math.max(view.counts.laid ?? 6, view.letters.length));
  const each = letters.flatMap((egg) => {
    const is = states.find((state) => state === fields[`egg ${egg}`]);
    return is ? [{ egg, is }] : [];
  });
  const counts = Object.fromEntries(
    kinds.flatMap(([kind]) => (numberOf(kind) === undefined ? [] : [[kind, numberOf(kind)]])),
  );
  const draft: Draft = {
    type: 'eggs-checked',
    clutch: view.id,
    how,
    ...(isByEgg ? {} : counts),
    ...(isByEgg && each.length > 0 ? { each } : {}),
    ...(troubles.length > 0 ? { troubles: [...troubles] } : {}),
  };
  const toggle = (trouble: EggTrouble) =>
    setTroubles((before) =>
      before.includes(trouble) ? before.filter((each_) => each_ !== trouble) : [...before, trouble],
    );
  return (
    <Sheet title="Look at the eggs" onClose={onClose}>
      <div class="two">
        {(['candled', 'looked'] as const).map((way) => (
          <Slab key={way} pressed={how === way} onPress={() => setHow(way)}>
            {way === 'candled' ? 'Candled' : 'Looked'}
          </Slab>
        ))}
        <Slab pressed={!isByEgg} onPress={() => setIsByEgg(false)}>
          Counts
        </Slab>
        <Slab pressed={isByEgg} onPress={() => setIsByEgg(true)}>
          Egg by egg
        </Slab>
      </div>
      {isByEgg ? (
        <div class="two">
          {letters.map((egg) => (
            <Slab
              key={egg}
              under={
                fields[`egg ${egg}`] ??
                view.letters.find(([each_]) => each_ === egg)?.[1] ??
                'not said'
              }
              onPress={() => change(`egg ${egg}`, next)}
            >
              Egg {egg}
            </Slab>
          ))}
        </div>
      ) : (
        kinds.map(([kind, words]) => (
          <Stepper
            key={kind}
            label={words}
            count={numberOf(kind)}
            most={MOST}
            onStep={(step) =>
              change(kind, (before) =>
                stepped(before === undefined ? undefined : Number(before), step, MOST)?.toString(),
              )
            }
          />
        ))
      )}
      <div class="room-fields" role="group" aria-label="What seems wrong">
        {eggTroubles.map((trouble) => (
          <button
            type="button"
            class="pill"
            key={trouble}
            aria-pressed={troubles.includes(trouble)}
            onClick={() => toggle(trouble)}
          >
            {trouble}
          </button>
        ))}
      </div>
      {troubles.map((trouble) => {
        const { means, ask } = meaningOf(trouble, view.day);
        return (
          <p class="note small" key={trouble}>
            <strong>{trouble}</strong>, day {view.day}: {means} {ask && <CallVet />}
          </p>
        );
      })}
      <Slab
        icon="eggs"
        kind="main"
        onPress={() =>
          void model.write({
            drafts: [draft],
            words: `Eggs of ${view.dam} ${how}`,
            after: () => {
              forget();
              onClose();
            },
          })
        }
      >
        Write
      </Slab>
      <p class="note small">Never turn an egg. Doubtful eggs that are firm are kept.</p>
    </Sheet>
  );
}
