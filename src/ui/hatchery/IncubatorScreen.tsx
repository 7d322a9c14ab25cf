import { momentWords } from '../../domain/core/day-words.ts';
import type { IncubatorId } from '../../domain/core/ids.ts';
import { agoWords, showC } from '../../domain/room/words.ts';
import type { IncubatorView } from '../../domain/views/incubator-view.ts';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { goInstead } from '../route.ts';
import { History } from '../screens/History.tsx';
import { Page } from '../screens/Page.tsx';
import { ImportForm } from '../room/ImportForm.tsx';
import { ChoreNotes } from './ChoreNotes.tsx';
import '../room/room.css';
import './hatchery.css';
import { HeatForm } from './HeatForm.tsx';
import { IncubatorSpan } from './IncubatorSpan.tsx';
import { ReadIncubator } from './ReadIncubator.tsx';

/** An incubator: what it shows, what is in it, and what it was like. `form` is open at first. */
export function IncubatorScreen({
  id,
  form,
}: {
  readonly id: IncubatorId;
  readonly form: string | undefined;
}) {
  const view = useView('incubator', id);
  const model = useModel();
  if (!view) return <Page title="Incubator" back />;
  const show = (next?: 'read' | 'heat' | 'sensor') =>
    goInstead(next === undefined ? `/incubator/${id}` : `/incubator/${id}/${next}`);
  const label = () => void model.desk.tell('giveCard', [id]).catch(model.failWith);
  return (
    <Page title={view.name} back>
      <ChoreNotes chores={view.chores} />
      <p>
        <strong class="room-temp number">
          {view.tempC === undefined ? '–' : showC(view.tempC)}
        </strong>{' '}
        {view.ageMin === undefined ? 'not read yet' : agoWords(view.ageMin)}
      </p>
      <p class="quiet small">
        Set to {showC(view.targetC)} · eggs between {showC(view.lowC)} and {showC(view.highC)}
      </p>
      <Slab icon="heat" kind="main" onPress={() => show('read')}>
        Write down a reading
      </Slab>
      <div class="two">
        <Slab onPress={() => show('sensor')} under="take in its CSV">
          Sensor’s file
        </Slab>
        <Slab icon="alarm" onPress={() => show('heat')}>
          {view.noHeat ? 'Heat is back' : 'No heat'}
        </Slab>
        {view.code === undefined ? (
          <Slab icon="print" onPress={label} under="then print it">
            Give it a label
          </Slab>
        ) : (
          <SlabLink icon="print" href="#/labels" under={view.code}>
            Print its label
          </SlabLink>
        )}
      </div>
      <InIt view={view} />
      <Failures view={view} />
      <IncubatorSpan id={id} />
      <History lines={view.history} isWhole={view.isWhole} />
      {form === 'read' && <ReadIncubator view={view} onClose={() => show()} />}
      {form === 'sensor' && (
        <ImportForm
          sensors={view.sensors}
          places={[
            { words: 'Between the eggs', where: { incubator: id, spot: 'egg level' } },
            { words: 'Air of the incubator', where: { incubator: id, spot: 'air' } },
          ]}
          onClose={() => show()}
        />
      )}
      {form === 'heat' && <HeatForm view={view} onClose={() => show()} />}
    </Page>
  );
}

const InIt = ({ view }: { readonly view: IncubatorView }) => (
  <section class="stack" aria-label="In it">
    <h2>In it</h2>
    {view.inIt.length === 0 && <p class="quiet">No eggs now.</p>}
    {view.inIt.map(({ id, dam }) => (
      <a class="row-link" key={id} href={`#/clutch/${id}`}>
        Eggs of {dam}
      </a>
    ))}
  </section>
);

const Failures = ({ view }: { readonly view: IncubatorView }) =>
  view.failures.length === 0 ? null : (
    <section class="stack" aria-label="Times without heat">
      <h2>Times without heat</h2>
      {view.failures.toReversed().map(({ id, from, until, lowestC }) => (
        <p key={id}>
          {momentWords(from)} to {until ? momentWords(until) : 'now'}
          {lowestC !== undefined && `, ${showC(lowestC)} at the lowest`}
        </p>
      ))}
    </section>
  );
