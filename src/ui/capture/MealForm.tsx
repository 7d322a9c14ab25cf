import { useState } from 'preact/hooks';
import type { Outcome, Prey } from '../../domain/events/feeding.ts';
import { showPrey, showMeal } from '../../domain/protocol/planned-meal.ts';
import { preySizes } from '../../domain/protocol/prey-sizes.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import type { FormProps } from './form-props.ts';

const outcomes = [
  { outcome: 'ate', words: 'Ate', icon: 'feed' },
  { outcome: 'refused', words: 'Refused', icon: 'refuse' },
  { outcome: 'left', words: 'Left overnight', icon: 'overnight' },
  { outcome: 'partly', words: 'Ate part', icon: 'feed' },
] as const;

const kinds = ['rat', 'mouse', 'soft-furred rat', 'gerbil', 'chick'] as const;
const states = ['thawed', 'fresh', 'live'] as const;

/** Any meal and any outcome; opens on the planned one. */
export function MealForm({ occupant, put, onClose }: FormProps) {
  const [prey, setPrey] = useState<Prey>(occupant.meal);
  const sizes = preySizes.filter(({ kind }) => kind === (prey.kind === 'mouse' ? 'mouse' : 'rat'));
  const write = (outcome: Outcome) =>
    put(
      { type: 'meal-offered', animal: occupant.id, prey, outcome },
      outcome === 'left' ? `${showPrey(prey)} left overnight` : `${outcome} ${showPrey(prey)}`,
    );
  return (
    <Sheet title={`A meal for ${occupant.name}`} onClose={onClose}>
      <Chips
        label="Prey"
        options={kinds}
        chosen={prey.kind}
        onChoose={(kind) => {
          const size =
            kind === 'mouse' ? preySizes.find((each) => each.kind === 'mouse') : undefined;
          setPrey({ ...prey, ...(size && { size: size.size, eachG: size.eachG }), kind });
        }}
      />
      <Chips
        label="Size"
        options={sizes.map(({ size }) => size)}
        chosen={prey.size}
        onChoose={(size) => {
          const eachG = sizes.find((each) => each.size === size)?.eachG;
          setPrey({ ...prey, size, ...(eachG === undefined ? {} : { eachG }) });
        }}
      />
      <Chips
        label="How many"
        options={['1', '2', '3', '4'] as const}
        chosen={String(prey.count)}
        onChoose={(count) => setPrey({ ...prey, count: Number(count) })}
      />
      <Chips
        label="State"
        options={states}
        chosen={prey.state}
        onChoose={(state) => setPrey({ ...prey, state })}
      />
      {prey.state === 'live' && (
        <p class="note note-warn small">
          Never leave a live rodent alone with a snake. Live feeding is unlawful in some places:
          check local rules.
        </p>
      )}
      <p class="number">{showMeal(prey)}</p>
      <div class="two">
        {outcomes.map(({ outcome, words, icon }) => (
          <Slab key={outcome} icon={icon} onPress={() => write(outcome)}>
            {words}
          </Slab>
        ))}
      </div>
      <p class="small quiet">
        Wash your hands after rodents as after snakes: both carry Salmonella.
      </p>
    </Sheet>
  );
}

function Chips<Option extends string>({
  label,
  options,
  chosen,
  onChoose,
}: {
  readonly label: string;
  readonly options: readonly Option[];
  readonly chosen: string;
  readonly onChoose: (option: Option) => void;
}) {
  return (
    <div role="group" aria-label={label} class="chips">
      {options.map((option) => (
        <button
          type="button"
          key={option}
          class="pill"
          aria-pressed={option === chosen}
          onClick={() => onChoose(option)}
        >
          {option}
        </button>
      ))}
    </div>
  );
}
