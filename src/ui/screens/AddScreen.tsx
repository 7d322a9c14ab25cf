import { useState } from 'preact/hooks';
import type { NewAnimal } from '../../domain/commands/new-animals.ts';
import { readAnimalLines } from '../../domain/commands/read-animal-lines.ts';
import { SlabLink } from '../components/Slab.tsx';
import { useDraft, useModel } from '../model.ts';
import { go } from '../route.ts';
import { Page } from './Page.tsx';
import { showMass } from '../mass-unit.ts';

/** Snakes one by one, or a whole list pasted in. Both say what was understood before it is written. */
export function AddScreen({ position }: { readonly position?: string | undefined }) {
  const { desk, fail, failWith } = useModel();
  const [isMany, setIsMany] = useState(false);

  const add = async (animals: readonly NewAnimal[], clear: () => void) => {
    try {
      const added = await desk.tell('addAnimals', animals);
      if (!added.ok) {
        fail(added.problem.message, 'Nothing was written.');
        return;
      }
      clear();
      const [only, second] = added.value;
      go(only && !second ? `/animal/${only}` : '/racks');
    } catch (error) {
      failWith(error);
    }
  };

  return (
    <Page title="Add snakes" back>
      <div class="two" role="group" aria-label="How">
        <button type="button" class="slab" aria-pressed={!isMany} onClick={() => setIsMany(false)}>
          One
        </button>
        <button type="button" class="slab" aria-pressed={isMany} onClick={() => setIsMany(true)}>
          Paste a list
        </button>
      </div>
      <SlabLink icon="add" href="#/spreadsheet" under="with weights, meals and sheds">
        Bring a spreadsheet
      </SlabLink>
      {isMany ? <PasteForm onAdd={add} /> : <OneForm position={position} onAdd={add} />}
    </Page>
  );
}

/** What was read from a line, part by part. */
const understood = ({ sex, position, massG, hatchedDay, traits }: NewAnimal): string =>
  [
    sex === 'unknown' ? 'sex not known' : sex,
    position ?? 'no tub',
    massG === undefined ? 'no mass' : showMass(massG),
    hatchedDay === undefined ? undefined : `hatched ${hatchedDay}`,
    traits,
  ]
    .filter((part) => part !== undefined)
    .join(' · ');

type OnAdd = (animals: readonly NewAnimal[], clear: () => void) => Promise<void>;

function PasteForm({ onAdd }: { readonly onAdd: OnAdd }) {
  const [text, setText] = useDraft('paste');
  const lines = readAnimalLines(text);
  const good = lines.flatMap((line) => (line.ok ? [line.animal] : []));
  const bad = lines.filter((line) => !line.ok);
  return (
    <form
      class="stack"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        void onAdd(good, () => setText(''));
      }}
    >
      <label>
        One snake a line: the name, then sex, position, mass, hatch day, genes
        <textarea
          rows={8}
          value={text}
          placeholder="Sorrel, f, B4-2, 1640 g, 2022-07-14, Pastel het Clown"
          onInput={({ currentTarget }) => setText(currentTarget.value)}
        />
      </label>
      {bad.map((line) => (
        <p class="note note-warn small" key={line.line}>
          {line.line}: {line.ok ? '' : line.why}
        </p>
      ))}
      {good.length > 0 && (
        <section aria-label="As it was understood">
          <ol class="plain-list">
            {good.map((animal, i) => (
              <li class="find-line" key={`${i} ${animal.name}`}>
                <strong>{animal.name}</strong>
                <span class="small quiet">{understood(animal)}</span>
              </li>
            ))}
          </ol>
        </section>
      )}
      <button type="submit" class="slab slab-main" disabled={good.length === 0 || bad.length > 0}>
        Add {good.length}
      </button>
    </form>
  );
}

function OneForm({
  position,
  onAdd,
}: {
  readonly position: string | undefined;
  readonly onAdd: OnAdd;
}) {
  const [line, setLine] = useState({ name: '', mass: '', day: '', traits: '' });
  const [tub, setTub] = useState(position ?? '');
  const [sex, setSex] = useState<NewAnimal['sex']>('unknown');
  const animal = (): NewAnimal => ({
    name: line.name.trim(),
    sex,
    ...(tub.trim() === '' ? {} : { position: tub.trim().toUpperCase() }),
    ...(line.mass === '' ? {} : { massG: Number(line.mass) }),
    ...(line.day === '' ? {} : { hatchedDay: line.day as NonNullable<NewAnimal['hatchedDay']> }),
    ...(line.traits.trim() === '' ? {} : { traits: line.traits.trim() }),
  });
  const set = (more: Partial<typeof line>) => setLine({ ...line, ...more });
  return (
    <form
      class="stack"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        void onAdd([animal()], () => {});
      }}
    >
      <label>
        Name or number
        <input
          required
          maxLength={60}
          value={line.name}
          autocomplete="off"
          onInput={({ currentTarget }) => set({ name: currentTarget.value })}
        />
      </label>
      <div class="chips" role="group" aria-label="Sex">
        {(['female', 'male', 'unknown'] as const).map((each) => (
          <button
            type="button"
            key={each}
            class="pill"
            aria-pressed={sex === each}
            onClick={() => setSex(each)}
          >
            {each === 'unknown' ? 'not known' : each}
          </button>
        ))}
      </div>
      <div class="field-row">
        <label>
          Tub, like B4-2
          <input
            value={tub}
            autocomplete="off"
            autocapitalize="characters"
            onInput={({ currentTarget }) => setTub(currentTarget.value)}
          />
        </label>
        <label>
          Mass in grams
          <input
            type="number"
            inputMode="decimal"
            min="15"
            max="6000"
            step="0.1"
            value={line.mass}
            onInput={({ currentTarget }) => set({ mass: currentTarget.value })}
          />
        </label>
        <label>
          Hatched
          <input
            type="date"
            value={line.day}
            onInput={({ currentTarget }) => set({ day: currentTarget.value })}
          />
        </label>
      </div>
      <label>
        Genes as you write them
        <input
          maxLength={300}
          value={line.traits}
          placeholder="Pastel, 66% het Pied"
          onInput={({ currentTarget }) => set({ traits: currentTarget.value })}
        />
      </label>
      <button type="submit" class="slab slab-main" disabled={line.name.trim() === ''}>
        Add {line.name.trim() || 'it'}
      </button>
    </form>
  );
}
