import { tenth } from '../../domain/core/tenth.ts';
import { useState } from 'preact/hooks';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { ValueStepper } from '../components/ValueStepper.tsx';
import { useDraft, useModel } from '../model.ts';

const HIGHEST_C = 34;
const LOWEST_C = 26;

/** A name, and what its thermostat is set to. */
export function NewIncubator({ onClose }: { readonly onClose: () => void }) {
  const model = useModel();
  const [name, setName] = useDraft('incubator.name');
  const [targetC, setTargetC] = useState(31.5);
  const step = (by: number) =>
    setTargetC((before) => Math.min(HIGHEST_C, Math.max(LOWEST_C, tenth(before + by))));
  const save = () =>
    void model.write({
      drafts: [{ type: 'incubator-made', name: name.trim(), targetC }],
      words: `Incubator ${name.trim()}`,
      after: () => {
        setName('');
        onClose();
      },
    });
  return (
    <Sheet title="Add an incubator" onClose={onClose}>
      <label class="field">
        Name
        <input
          value={name}
          maxLength={40}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      <p class="small">Its thermostat is set to</p>
      <ValueStepper
        name="Set to"
        words={`${targetC.toFixed(1)}\u00a0°C`}
        canLess={targetC > LOWEST_C}
        canMore={targetC < HIGHEST_C}
        onStep={(steps) => step(steps / 10)}
      />
      <Slab icon="heat" kind="main" disabled={name.trim() === ''} onPress={save}>
        Write
      </Slab>
      <p class="note small">
        Run it empty for a week or two, with a thermometer of its own between dummy eggs, and a
        second device that cuts the heat off.
      </p>
    </Sheet>
  );
}
