import type { EggChore } from '../../domain/views/hatchery-view.ts';
import { Because } from '../components/Because.tsx';
import { Icon } from '../components/Icon.tsx';
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
    {chores.map((chore) => {
      const words = (
        <>
          <Icon name={chore.alarm ? 'alarm' : chore.rule.startsWith('I') ? 'heat' : 'eggs'} />
          <strong>
            {of !== undefined && `${of}: `}
            {chore.asks}
            {chore.state === 'overdue' && !chore.alarm && <span class="overdue"> overdue</span>}
          </strong>
        </>
      );
      return (
        <div class={`note${chore.alarm ? ' note-warn' : ''}`} key={chore.rule}>
          {href === undefined ? (
            <p class="alarm-line">{words}</p>
          ) : (
            <a class="alarm-line" href={href}>
              {words}
            </a>
          )}
          <Because chore={chore} />
          {chore.vet && <CallVet />}
        </div>
      );
    })}
  </>
);
