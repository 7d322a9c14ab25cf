import type { ComponentChildren } from 'preact';
import { unitsFor } from '../../domain/sheet/amount.ts';
import type { ColumnChoice } from '../../domain/sheet/columns.ts';
import { meaningNames, meanings } from '../../domain/sheet/meanings.ts';
import type { ColumnPreview } from '../../domain/sheet/preview.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';

/** Everything about one column: what it is, how it is measured, how its dates are written. */
export function ColumnSheet({
  column,
  onPick,
  onClose,
}: {
  readonly column: ColumnPreview;
  readonly onPick: (choice: ColumnChoice) => void;
  readonly onClose: () => void;
}) {
  const { heading, letters, samples, meaning, unit, order } = column;
  return (
    <Sheet title={`Column ${letters}: ${heading}`} onClose={onClose}>
      <p class="small quiet">{samples.join(' · ') || 'empty'}</p>
      <label>
        It holds
        <select
          value={meaning}
          onChange={({ currentTarget }) => {
            const next = meaningNames.find((name) => name === currentTarget.value);
            if (next) onPick({ meaning: next });
          }}
        >
          {meaningNames.map((name) => (
            <option key={name} value={name}>
              {meanings[name].name}
            </option>
          ))}
        </select>
      </label>
      <p>{meanings[meaning].says}</p>
      {unit && (
        <Choice label="Unit" because={unit.because}>
          {unitsFor(unit.kind).map((each) => (
            <Pick
              key={each}
              isPicked={unit.unit === each && !unit.isOpen}
              onPick={() => onPick({ unit: each })}
            >
              {each}
            </Pick>
          ))}
        </Choice>
      )}
      {order && (
        <Choice label="Dates" because={order.because}>
          <Pick
            isPicked={order.order === 'day first' && !order.isOpen}
            onPick={() => onPick({ order: 'day first' })}
          >
            Day first: 4/3 is 4 March
          </Pick>
          <Pick
            isPicked={order.order === 'month first' && !order.isOpen}
            onPick={() => onPick({ order: 'month first' })}
          >
            Month first: 4/3 is 3 April
          </Pick>
        </Choice>
      )}
      {order?.looksSwapped && (
        <Choice label="Real dates" because="They hold a day each, whatever they look like.">
          <Pick
            isPicked={!order.isOpen && !order.swapped}
            onPick={() => onPick({ order: order.order, swapped: false })}
          >
            Right as they are
          </Pick>
          <Pick
            isPicked={!order.isOpen && order.swapped}
            onPick={() => onPick({ order: order.order, swapped: true })}
          >
            Day and month swapped
          </Pick>
        </Choice>
      )}
      <Slab kind="main" onPress={onClose}>
        Done
      </Slab>
    </Sheet>
  );
}

const Choice = ({
  label,
  because,
  children,
}: {
  readonly label: string;
  readonly because: string;
  readonly children: ComponentChildren;
}) => (
  <fieldset class="sheet-choice">
    <legend>{label}</legend>
    <p class="small">{because}</p>
    <div class="chips">{children}</div>
  </fieldset>
);

const Pick = ({
  isPicked,
  onPick,
  children,
}: {
  readonly isPicked: boolean;
  readonly onPick: () => void;
  readonly children: ComponentChildren;
}) => (
  <button type="button" class="pill" aria-pressed={isPicked} onClick={onPick}>
    {children}
  </button>
);
