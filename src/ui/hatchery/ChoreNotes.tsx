import type { EggChore } from '../../domain/views/hatchery-view.ts';
import { AskNote } from '../components/AskNote.tsx';
import { CallVet } from '../screens/CallVet.tsx';

/** What is to be done about eggs or an incubator, each with its reason. `href` leads to where. */
export const ChoreNotes = ({
  of,
  chores,
  href,
}: {
  readonly of?: string | undefined;
  readonly chores: readonly EggChore[];
  readonly href?: string | undefined;
}) => (
  <>
    {chores.map((chore) => (
      <AskNote
        key={chore.rule}
        icon={chore.alarm ? 'alarm' : chore.rule.startsWith('I') ? 'heat' : 'eggs'}
        words={
          <>
            {of !== undefined && `${of}: `}
            {chore.asks}
            {chore.state === 'overdue' && !chore.alarm && <span class="overdue"> overdue</span>}
          </>
        }
        chore={chore}
        isAlarm={chore.alarm}
        href={href}
      >
        {chore.vet && <CallVet />}
      </AskNote>
    ))}
  </>
);
