import type { AnimalId } from '../../domain/core/ids.ts';
import type { SeasonView } from '../../domain/views/season-view.ts';
import { FollicleCurve } from '../charts/FollicleCurve.tsx';
import { Icon } from '../components/Icon.tsx';
import { StageReasons } from '../components/StageReasons.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import './season.css';
import { axisOf, WindowBar } from './WindowBar.tsx';

/** The season of one snake: where it stands, what is coming, and what that rests on. */
export function SeasonSection({ id }: { readonly id: AnimalId }) {
  const view = useView('season', id);
  if (!view?.stage && !view?.earlier.length) return null;
  return (
    <section class="stack">
      <h2>Season</h2>
      {view.stage && <StageLine stage={view.stage} since={view.since} />}
      {view.conflicts.map((question) => (
        <p class="note note-warn" key={question}>
          {question}
        </p>
      ))}
      <Coming view={view} />
      {view.signs.length > 0 && (
        <ul class="season-signs">
          {view.signs.map(({ sign, seen, history }) => (
            <li key={sign}>
              Sign: {seen}.{history !== undefined && <span class="quiet small"> {history}</span>}
            </li>
          ))}
        </ul>
      )}
      {view.trend !== undefined && (
        <p>
          <strong>Growth:</strong> {view.trend}
        </p>
      )}
      {view.curve && <FollicleCurve curve={view.curve} />}
      {view.earlier.length > 0 && (
        <div>
          <h3>Earlier seasons</h3>
          <dl class="sign-lines">
            {view.earlier.map(({ opened, years, says }) => (
              <div key={opened}>
                <dt class="number">{years}</dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
      <a class="row-link" href="#/season">
        <Icon name="eggs" /> All females on one strip
      </a>
    </section>
  );
}

const StageLine = ({
  stage,
  since,
}: {
  readonly stage: NonNullable<SeasonView['stage']>;
  readonly since: SeasonView['since'];
}) => (
  <div class="season-stage">
    <strong>{stage.words}</strong>
    <Unfolds summary={since === undefined ? 'Why' : `Since ${dateWords(since)}. Why`}>
      {() => <StageReasons stage={stage} />}
    </Unfolds>
  </div>
);

function Coming({ view: { windows, night } }: { readonly view: SeasonView }) {
  if (windows.length === 0) return null;
  const axis = axisOf(night, windows);
  return (
    <ul class="coming" aria-label="Coming">
      {windows.map((window) => (
        <li key={window.event}>
          <strong>{window.says}</strong>
          {window.isOverdue && <b class="overdue">overdue</b>}
          <WindowBar window={window} axis={axis} />
          <span class="quiet small">{window.rests}</span>
        </li>
      ))}
      <li class="quiet small">Each window holds in 4 of 5 cases. The upright line is tonight.</li>
    </ul>
  );
}
