import { MOST_OFFSET_MM, readOffset, type OffsetMm } from '../../domain/labels/offset.ts';

export interface PrinterOffsetProps {
  readonly offset: OffsetMm;
  readonly onChange: (offset: OffsetMm) => void;
  readonly onTest: () => void;
}

/** For printers that print beside the mark: a test page, and two numbers read from it. */
export function PrinterOffset({ offset, onChange, onTest }: PrinterOffsetProps) {
  const field = (label: string, axis: keyof OffsetMm) => (
    <label class="labels-field">
      {label}
      <input
        type="number"
        inputMode="decimal"
        step="0.1"
        min={-MOST_OFFSET_MM}
        max={MOST_OFFSET_MM}
        value={offset[axis]}
        onChange={({ currentTarget }) => {
          const read = readOffset(currentTarget.valueAsNumber);
          currentTarget.value = String(read);
          onChange({ ...offset, [axis]: read });
        }}
      />
    </label>
  );
  const { x, y } = offset;
  return (
    <details class="labels-fold">
      <summary>{x === 0 && y === 0 ? 'Printer test' : `Printer moved by ${x}, ${y} mm`}</summary>
      <p class="labels-hint">
        Print the test page on plain paper and lay it on your labels, against the light.
      </p>
      <button type="button" onClick={onTest}>
        Print the test page
      </button>
      <div class="labels-pair">
        {field('Move right (mm)', 'x')}
        {field('Move down (mm)', 'y')}
      </div>
      <p class="labels-hint">Less than zero moves left or up.</p>
    </details>
  );
}
