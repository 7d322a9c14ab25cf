import { addDays, type Day } from '../../domain/core/calendar.ts';
import { NIGHTS_BACK } from '../../domain/views/nights-back.ts';
import { nightWords } from '../night.ts';

/** Which night it happened: tonight unless said otherwise. Catching up is part of the job. */
export function WhenPicker({
  tonight,
  night,
  onPick,
}: {
  readonly tonight: Day;
  readonly night: Day | undefined;
  readonly onPick: (night: Day | undefined) => void;
}) {
  const earlier = Array.from({ length: NIGHTS_BACK }, (_, i) => addDays(tonight, -1 - i));
  return (
    <label class="when">
      <span class="quiet small">Write it to</span>
      <select
        value={night ?? ''}
        onChange={({ currentTarget }) =>
          onPick(currentTarget.value === '' ? undefined : (currentTarget.value as Day))
        }
      >
        <option value="">{nightWords(tonight)}, now</option>
        {earlier.map((day) => (
          <option key={day} value={day}>
            {nightWords(day)}
          </option>
        ))}
      </select>
    </label>
  );
}
