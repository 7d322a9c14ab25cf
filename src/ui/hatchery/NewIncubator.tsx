import { tenth } from '../../domain/core/tenth.ts';
import { useState } from 'preact/hooks';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
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
      <div class="stepper" role="group" aria-label="Set to">
        <span>Set to</span>
        <button type="button" aria-label="Cooler" onClick={() => step(-0.1)}>
          −
        </button>
        <output aria-label="Set to">{targetC.toFixed(1)} °C</output>
        <button type="button" aria-label="Warmer" onClick={() => step(0.1)}>
          +
        </button>
      </div>
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
