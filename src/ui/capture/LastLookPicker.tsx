import type { Moment } from '../../domain/core/calendar.ts';
import type { LastLook } from './last-looks.ts';

/** Since when it may have happened. */
export const LastLookPicker = ({
  label,
  looks,
  chosen,
  onPick,
}: {
  readonly label: string;
  readonly looks: readonly LastLook[];
  readonly chosen: Moment | undefined;
  readonly onPick: (at: Moment | undefined) => void;
}) => (
  <label>
    {label}
    <select
      value={chosen ?? ''}
      onChange={({ currentTarget }) =>
        onPick(looks.find(({ at }) => at === currentTarget.value)?.at)
      }
    >
      <option value="">not known</option>
      {looks.map(({ at, words }) => (
        <option key={at} value={at}>
          {words}
        </option>
      ))}
    </select>
  </label>
);
