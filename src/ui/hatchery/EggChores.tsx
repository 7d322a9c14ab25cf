import { useView } from '../model.ts';
import { ChoreNotes } from './ChoreNotes.tsx';

/** What eggs and incubators ask for tonight; nothing where there are none. */
export function EggChores() {
  const view = useView('hatchery', null);
  if (!view) return null;
  const asking = [
    ...view.incubators.map(({ id, name, chores }) => ({
      id,
      chores,
      of: undefined,
      href: `#/incubator/${id}${chores.some(({ rule }) => rule === 'I3') ? '/read' : ''}`,
      name,
    })),
    ...view.open.map(({ id, dam, chores }) => ({
      id,
      chores,
      of: `Eggs of ${dam}`,
      href: `#/clutch/${id}`,
      name: dam,
    })),
  ].filter(({ chores }) => chores.length > 0);
  if (asking.length === 0) return null;
  return (
    <section class="stack" aria-label="Eggs and incubators">
      {asking.map(({ id, of, chores, href }) => (
        <ChoreNotes key={id} of={of} chores={chores} href={href} />
      ))}
    </section>
  );
}
