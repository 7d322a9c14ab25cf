import type { ComponentChildren } from 'preact';
import type { ColumnMap } from '../../domain/room/csv/columns.ts';
import type { ReadingsPreview } from '../../domain/room/csv/look-into.ts';

const numberOr = (value: string) => (value === '' ? undefined : Number(value));

/** What the columns were taken for, to be put right. */
export function ColumnPicker({
  preview,
  onPick,
}: {
  readonly preview: ReadingsPreview;
  readonly onPick: (map: ColumnMap) => void;
}) {
  const { map, names, samples, unsure } = preview;
  const example = (column: number): string => samples[0]?.[column]?.trim() ?? '';
  const options = names.map((name, column) => (
    <option key={column} value={column}>
      {name}: {example(column)}
    </option>
  ));
  const optional = (
    <>
      <option value="">none</option>
      {options}
    </>
  );
  return (
    <fieldset class="room-columns">
      <legend>Read as</legend>
      <Select label="Date" value={map.date} onPick={(v) => onPick({ ...map, date: Number(v) })}>
        {options}
      </Select>
      <Select
        label="Time, if apart"
        value={map.time ?? ''}
        onPick={(v) => onPick({ ...map, time: numberOr(v) })}
      >
        {optional}
      </Select>
      <Select
        label="Temperature"
        value={map.temp}
        onPick={(v) => onPick({ ...map, temp: Number(v) })}
      >
        {options}
      </Select>
      <Select
        label="Humidity"
        value={map.humidity ?? ''}
        onPick={(v) => onPick({ ...map, humidity: numberOr(v) })}
      >
        {optional}
      </Select>
      <Select
        label={`Unit${unsure.includes('unit') ? ' – please check' : ''}`}
        value={map.unit}
        onPick={(v) => onPick({ ...map, unit: v === '°F' ? '°F' : '°C' })}
      >
        <option value="°C">°C</option>
        <option value="°F">°F</option>
      </Select>
      <Select
        label={`Dates like 4/3/26${unsure.includes('order') ? ' – please check' : ''}`}
        value={map.order}
        onPick={(v) => onPick({ ...map, order: v === 'month first' ? 'month first' : 'day first' })}
      >
        <option value="day first">day first: 4 March</option>
        <option value="month first">month first: 3 April</option>
      </Select>
    </fieldset>
  );
}

const Select = ({
  label,
  value,
  onPick,
  children,
}: {
  readonly label: string;
  readonly value: string | number;
  readonly onPick: (value: string) => void;
  readonly children: ComponentChildren;
}) => (
  <label>
    <span class="quiet small">{label}</span>
    <select value={value} onChange={({ currentTarget }) => onPick(currentTarget.value)}>
      {children}
    </select>
  </label>
);
