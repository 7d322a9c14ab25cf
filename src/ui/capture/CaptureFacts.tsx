import type { ComponentChildren } from 'preact';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Because } from '../components/Because.tsx';
import { Icon } from '../components/Icon.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { lazy } from '../lazy.tsx';
import { nightWords } from '../night.ts';
import { CallVet } from '../screens/CallVet.tsx';
import { showMass } from '../mass-unit.ts';

const StageReasons = lazy(
  async () => (await import('../components/StageReasons.tsx')).StageReasons,
  null,
);
const LineExtras = lazy(async () => (await import('./LineExtras.tsx')).LineExtras, null);

/** What is due here and why, and the last few things written down. */
export function CaptureFacts({
  view,
  occupant,
  children,
}: {
  readonly children: ComponentChildren;
  readonly view: CaptureView;
  readonly occupant: Occupant;
}) {
  return (
    <section class="capture-facts" aria-label="What is known">
      <p class="marks">
        {occupant.massG !== undefined && (
          <span class="mark number">
            <Icon name="weigh" />
            {showMass(occupant.massG)}
            <span class="quiet"> {occupant.massNight && nightWords(occupant.massNight)}</span>
          </span>
        )}
        {occupant.gone !== undefined && (
          <span class="mark">
            <Icon name="alarm" /> {occupant.gone}
          </span>
        )}
        {occupant.inBlue && (
          <span class="mark">
            <Icon name="blue" /> in blue
          </span>
        )}
        {occupant.quarantine && (
          <span class="mark">
            <Icon name="quarantine" /> quarantine
          </span>
        )}
        {view.pair && (
          <span class="mark">
            <Icon name="pair" /> together since {nightWords(view.pair.since)}
          </span>
        )}
      </p>
      {occupant.season && <Stage stage={occupant.season.stage} />}
      {occupant.chores.map((chore) => (
        <div class={`due${chore.blocked === undefined ? '' : ' due-blocked'}`} key={chore.rule}>
          <p>
            <strong>{chore.asks}</strong>
            {chore.state === 'overdue' && chore.blocked === undefined && (
              <span class="overdue">overdue</span>
            )}
          </p>
          {chore.blocked !== undefined && (
            <p class="small">
              <Icon name="hold" /> Not tonight: {chore.blocked}
            </p>
          )}
          <Because chore={chore} />
          {chore.vet && <CallVet />}
        </div>
      ))}
      {occupant.chores.length === 0 && occupant.feedingBlock !== undefined && (
        <p class="small">
          <Icon name="hold" /> Not fed: {occupant.feedingBlock}
        </p>
      )}
      {children}
      <ol class="recent" aria-label="Last records">
        {occupant.recent.map((line) => (
          <li key={line.id}>
            <span class="quiet number">{nightWords(line.night)}</span> {line.words}{' '}
            {(line.photo ?? line.amend) && <LineExtras line={line} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

const Stage = ({ stage }: { readonly stage: NonNullable<Occupant['season']>['stage'] }) => (
  <Unfolds kind="stage" summary={stage.words}>
    {() => <StageReasons stage={stage} />}
  </Unfolds>
);
