import { tempFields, type StepText } from './programme-text.ts';

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const words: Record<(typeof tempFields)[number], string> = {
  dayC: 'Air, day',
  nightC: 'Air, night',
  hotSpotC: 'Hot spot',
  hotSpotNightC: 'Hot spot, night',
};

/** One step: a date of the year, and what the room shall be on it. */
export const StepBoxes = ({
  number,
  text,
  isWrong,
  onChange,
  onRemove,
}: {
  readonly number: number;
  readonly text: StepText;
  readonly isWrong: boolean;
  readonly onChange: (changed: Partial<StepText>) => void;
  readonly onRemove: (() => void) | undefined;
}) => (
  <li class="room-step">
    <fieldset>
      <legend class="hidden-words">Step {number}</legend>
      <div class="room-step-date">
        <label>
          <span class="quiet small">Day</span>
          <select
            value={text.day}
            onChange={({ currentTarget }) => onChange({ day: Number(currentTarget.value) })}
          >
            {Array.from({ length: DAYS[text.month - 1] ?? 31 }, (_, i) => (
              <option key={i} value={i + 1}>
                {i + 1}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span class="quiet small">Month</span>
          <select
            value={text.month}
            onChange={({ currentTarget }) => {
              const month = Number(currentTarget.value);
              onChange({ month, day: Math.min(text.day, DAYS[month - 1] ?? 31) });
            }}
          >
            {MONTHS.map((month, i) => (
              <option key={month} value={i + 1}>
                {month}
              </option>
            ))}
          </select>
        </label>
        {onRemove && (
          <button type="button" class="pill" onClick={onRemove}>
            Remove<span class="hidden-words"> step {number}</span>
          </button>
        )}
      </div>
      <div class="room-step-temps">
        {tempFields.map((field) => (
          <label key={field}>
            <span class="quiet small">{words[field]}</span>
            <input
              inputMode="decimal"
              value={text[field]}
              placeholder={field === 'hotSpotNightC' ? 'as by day' : ''}
              onInput={({ currentTarget }) => onChange({ [field]: currentTarget.value })}
            />
          </label>
        ))}
      </div>
      {isWrong && (
        <p class="small" role="alert">
          Day and night each need a temperature a room can have.
        </p>
      )}
    </fieldset>
  </li>
);
