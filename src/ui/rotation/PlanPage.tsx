import { useEffect, useState } from 'preact/hooks';
import type { PlanView } from '../../domain/views/plan-view.ts';
import { Slab, SlabLink } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel, useView } from '../model.ts';
import { AwayEvenings } from './AwayEvenings.tsx';
import { PlanLine } from './PlanLine.tsx';

const visitsWords = (n: number): string => (n === 1 ? '1 visit' : `${n} visits`);

/** The plan of the next nights, made anew whenever a record changes the facts. */
export function PlanPage() {
  const { desk, failWith, write } = useModel();
  const rotation = useView('rotation', null);
  const [plan, setPlan] = useState<{ readonly key: string; readonly view: PlanView }>();
  const key = rotation?.planKey;
  useEffect(() => {
    if (key === undefined) return undefined;
    let isWanted = true;
    desk.tell('planVisits', null).then((view) => {
      if (isWanted) setPlan({ key, view });
    }, failWith);
    return () => {
      isWanted = false;
    };
  }, [key]);
  if (!rotation || !plan) return <p aria-busy="true">Planning…</p>;
  const { view } = plan;
  const keep = () =>
    void write({
      drafts: [{ type: 'visits-planned', ...view.toKeep, visits: [...view.toKeep.visits] }],
      words: `Plan kept: ${visitsWords(view.toKeep.visits.length)}`,
    });
  return (
    <>
      <p role="status" class={plan.key === key ? undefined : 'quiet'}>
        {plan.key === key ? view.proof : 'Planning again…'}
      </p>
      {view.changes.length > 0 && (
        <section class="note" aria-label="What has changed">
          <h2>Changed since the plan you kept</h2>
          <ul>
            {view.changes.map((change) => (
              <li key={change}>{change}</li>
            ))}
          </ul>
        </section>
      )}
      {view.isKept ? (
        <SlabLink icon="check" kind="main" href="#/moves" under="you go by this plan">
          Tonight’s moves
        </SlabLink>
      ) : (
        view.toKeep.visits.length > 0 && (
          <Slab
            icon="check"
            kind="main"
            under="tonight’s list goes by it"
            onPress={keep}
            disabled={plan.key !== key}
          >
            Keep this plan
          </Slab>
        )
      )}
      {view.visits.length === 0 && (
        <p class="note">No visit can be planned. The reasons are below; the board is the start.</p>
      )}
      <ol class="stack" aria-label="Visits">
        {view.visits.map((visit) => (
          <PlanLine key={`${visit.male}${visit.female}${visit.in}`} visit={visit} />
        ))}
      </ol>
      {view.brokenPins.map((pin) => (
        <p class="note note-warn" key={pin}>
          {pin}
        </p>
      ))}
      {view.unplanned.length > 0 && (
        <section class="stack">
          <h2>Not planned, and what would free it</h2>
          <ul class="stack" aria-label="Not planned">
            {view.unplanned.map(({ male, female, says }) => (
              <li key={male + female}>
                <strong>
                  {male} with {female}
                </strong>
                {says.map((line) => (
                  <p class="small" key={line}>
                    {line}
                  </p>
                ))}
              </li>
            ))}
          </ul>
        </section>
      )}
      <AwayEvenings away={rotation.away} night={rotation.night} />
      <Unfolds summary="What the plan looks for">
        {() => (
          <ol class="small">
            {view.objective.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        )}
      </Unfolds>
    </>
  );
}
