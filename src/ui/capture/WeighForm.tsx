import { MassPad, typedMass } from '../components/MassPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { readMass, showMass } from '../mass-unit.ts';
import { useDraft } from '../model.ts';
import type { FormProps } from './form-props.ts';

/** A mass, typed in the keeper's unit, kept in grams with what was typed. */
export function WeighForm({ occupant, put, onClose }: FormProps) {
  const [typed, setTyped] = useDraft(`weigh.${occupant.id}`);
  const draftOf = (massG: number) => ({ type: 'weighed', animal: occupant.id, massG }) as const;
  const save = () => {
    const mass = readMass(typed);
    if (!mass) return;
    put({ type: 'weighed', animal: occupant.id, ...mass }, `weighed ${showMass(mass.massG)}`, {
      after: () => setTyped(''),
      instead: draftOf,
    });
  };
  return (
    <Sheet title={`Weight of ${occupant.name}`} onClose={onClose}>
      <MassPad
        label="Weight"
        before={occupant.massG === undefined ? undefined : `last ${showMass(occupant.massG)}`}
        typed={typed}
        onType={setTyped}
        doneLabel={typed === '' ? 'Write' : `Write ${typedMass(typed)}`}
        onDone={save}
      />
    </Sheet>
  );
}
