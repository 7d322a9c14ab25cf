import { useState } from 'preact/hooks';
import { GRAMS_PER_OUNCE, showGrams } from '../../domain/core/units.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { useDraft } from '../model.ts';
import { remember, remembered } from '../remember.ts';
import type { FormProps } from './form-props.ts';

/** A mass, typed in the keeper's unit, kept in grams with what was typed. */
export function WeighForm({ occupant, put, onClose }: FormProps) {
  const [typed, setTyped] = useDraft(`weigh.${occupant.id}`);
  const [unit, setUnit] = useState<'g' | 'oz'>(remembered('mass-unit') === 'oz' ? 'oz' : 'g');
  const draftOf = (massG: number) => ({ type: 'weighed', animal: occupant.id, massG }) as const;
  const save = () => {
    const value = Number(typed);
    const massG = unit === 'g' ? value : Math.round(value * GRAMS_PER_OUNCE * 10) / 10;
    put(
      unit === 'g' ? draftOf(massG) : { ...draftOf(massG), entered: { value, unit } },
      `weighed ${showGrams(massG)}`,
      { after: () => setTyped(''), instead: draftOf },
    );
  };
  return (
    <Sheet title={`Weight of ${occupant.name}`} onClose={onClose}>
      <NumberPad
        label="Weight"
        unit={unit}
        decimals
        before={occupant.massG === undefined ? undefined : `last ${showGrams(occupant.massG)}`}
        typed={typed}
        onType={setTyped}
        doneLabel={typed === '' ? 'Write' : `Write ${typed} ${unit}`}
        onDone={save}
      />
      <button
        type="button"
        class="pill"
        onClick={() => {
          const next = unit === 'g' ? 'oz' : 'g';
          remember('mass-unit', next);
          setUnit(next);
        }}
      >
        Weigh in {unit === 'g' ? 'ounces' : 'grams'}
      </button>
    </Sheet>
  );
}
