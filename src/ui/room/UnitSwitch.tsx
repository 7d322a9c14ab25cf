import { setTempUnit, tempUnit } from './temp-unit.ts';

/** Degrees Celsius or Fahrenheit, for reading and typing. */
export function UnitSwitch() {
  const other = tempUnit.value === '°C' ? '°F' : '°C';
  return (
    <button type="button" class="pill room-unit" onClick={() => setTempUnit(other)}>
      Use {other}
    </button>
  );
}
