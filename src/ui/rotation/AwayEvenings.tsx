import { addDays, type Day } from '../../domain/core/calendar.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel } from '../model.ts';
import { nightWords } from '../night.ts';

const NIGHTS = 16;

/** Evenings on which nobody can move a male; a tap changes one. */
export function AwayEvenings({
  away,
  night,
}: {
  readonly away: readonly Day[];
  readonly night: Day;
}) {
  const { write } = useModel();
  const days = Array.from({ length: NIGHTS }, (_, i) => addDays(night, i));
  const turn = (day: Day) => {
    const is = away.includes(day) ? 'there' : 'away';
    void write({
      drafts: [{ type: 'evenings-away', from: day, last: day, is }],
      words: `${nightWords(day)}: ${is === 'away' ? 'nobody there' : 'somebody there'}`,
    });
  };
  return (
    <Unfolds summary={`Evenings away: ${away.length}`}>
      {() => (
        <div class="chips" role="group" aria-label="Evenings away">
          {days.map((day) => (
            <button
              type="button"
              class="pill"
              key={day}
              aria-pressed={away.includes(day)}
              onClick={() => turn(day)}
            >
              {nightWords(day)}
            </button>
          ))}
        </div>
      )}
    </Unfolds>
  );
}
