import { useState } from 'preact/hooks';
import { snapped } from '../../domain/protocol/value-limits.ts';
import { showValue } from '../../domain/protocol/value-words.ts';
import type { ValueRow } from '../../domain/views/protocol-view.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { ValueStepper } from '../components/ValueStepper.tsx';
import { WhatChanges } from './WhatChanges.tsx';

/** One number: why it is what it is, another one, and what that would change tonight. */
export function ValueSheet({
  row,
  onClose,
}: {
  readonly row: ValueRow;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const { key, name, unit, usual, entry, school } = row;
  const [value, setValue] = useState(row.value);
  const [typed, setTyped] = useState<string>();
  const words = showValue(value, unit);
  const close = () => onClose();

  if (typed !== undefined) {
    return (
      <Sheet title={name} onClose={close}>
        <NumberPad
          label={name}
          unit={entry.unit}
          decimals={entry.decimals}
          before={`now ${row.words}`}
          typed={typed}
          onType={setTyped}
          doneLabel={typed === '' ? 'Look at it' : `Look at ${typed} ${entry.unit}`}
          onDone={() => {
            // No rounding: what cannot be is said, not silently made something else.
            setValue(Number((Number(typed) / entry.times).toFixed(5)));
            setTyped(undefined);
          }}
        />
      </Sheet>
    );
  }
  return (
    <Sheet title={name} onClose={close}>
      <p>{row.why}</p>
      <ValueStepper
        words={words}
        name={name}
        canLess={value * entry.times > entry.least}
        canMore={value * entry.times < entry.most}
        onStep={(steps) => setValue(stepped(value, steps, row))}
        onType={() => setTyped('')}
      />
      <div class="chips">
        {value !== usual && (
          <button type="button" class="pill" onClick={() => setValue(usual)}>
            Default, {row.usualWords}
          </button>
        )}
        {school && value !== school.value && (
          <button type="button" class="pill" onClick={() => setValue(school.value)}>
            {school.name}, {school.words}
          </button>
        )}
      </div>
      <p class="quiet small">
        Most keep {row.range}. {row.source}
      </p>
      {value !== row.value && (
        <>
          <WhatChanges changes={{ [key]: value === usual ? null : value }} />
          <Slab
            kind="main"
            onPress={() =>
              void write({
                drafts: [
                  { type: 'protocol-set', values: { [key]: value === usual ? null : value } },
                ],
                words: `${name} ${words}`,
                after: close,
              })
            }
          >
            Write {words}
          </Slab>
        </>
      )}
    </Sheet>
  );
}

/** The next value that a thumb can step to, within the limits. */
function stepped(value: number, steps: number, { entry }: ValueRow): number {
  const { times, step, least, most } = entry;
  const next = snapped(value * times + steps * step, entry.fineness);
  return Number((Math.min(most, Math.max(least, next)) / times).toFixed(5));
}
