import { useState } from 'preact/hooks';
import type { AnimalView } from '../../domain/views/animal-view.ts';
import { exceptionWords } from '../../domain/views/prey-words.ts';
import type { WeightView } from '../../domain/views/weight-view.ts';
import { WeightCurve } from '../charts/WeightCurve.tsx';
import { Cite } from '../components/Cite.tsx';
import { Icon, type IconName } from '../components/Icon.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';
import { ExceptionForm } from './ExceptionForm.tsx';
import './feeding.css';
import { SmallerForm } from './SmallerForm.tsx';

/** Weight with meals under it, what refusals mean beside it, and whether it is grown enough to breed. */
export function WeightSection({ view }: { readonly view: AnimalView }) {
  const more = useView('weight', view.id);
  return (
    <>
      <WeightCurve masses={view.masses} meals={view.meals} more={more} />
      {more && <Course more={more} />}
      {more && <Refusals more={more} />}
      {more && <OwnPlan view={view} more={more} />}
      {more && more.readiness.length > 0 && <Readiness view={view} more={more} />}
    </>
  );
}

const Course = ({ more }: { readonly more: WeightView }) => (
  <section class="stack">
    <p>
      <strong>Trend:</strong> {more.trend} {more.meal}
    </p>
    {more.growth !== undefined && (
      <p>
        <strong>Growth:</strong> {more.growth}
      </p>
    )}
    {more.looked.length > 0 && (
      <Unfolds summary={more.speaks ? 'What the loss was held against' : 'Why a drop is no alarm'}>
        {() => (
          <div class="because">
            {more.looked.map((line) => (
              <p key={line}>{line}</p>
            ))}
            <Cite source="lossLimits" />
          </div>
        )}
      </Unfolds>
    )}
  </section>
);

const levelIcons = { expected: 'check', watch: 'look', act: 'alarm' } as const satisfies Record<
  string,
  IconName
>;
const levelWords = {
  expected: 'as expected',
  watch: 'keep an eye on it',
  act: 'something to be done',
} as const;

function Refusals({ more: { refusals, after } }: { readonly more: WeightView }) {
  if (!refusals && !after) return null;
  return (
    <section class="stack">
      <h2>Appetite</h2>
      {refusals && (
        <div class={`note${refusals.level === 'act' ? ' note-warn' : ''}`}>
          <p class="alarm-line">
            <Icon name={levelIcons[refusals.level]} />
            <strong>
              Refusals: {refusals.isGoodSign ? 'a good sign' : levelWords[refusals.level]}
            </strong>
          </p>
          {refusals.because.map((line) => (
            <p class="small" key={line}>
              {line}
            </p>
          ))}
          {refusals.looks.length > 0 && (
            <ul class="small looks">
              {refusals.looks.map((look) => (
                <li key={look}>{look}</li>
              ))}
            </ul>
          )}
          {refusals.asksVet && <p class="small">If it goes on: a reptile vet.</p>}
          <Unfolds summary="Whence">{() => <Cite source={refusals.source} />}</Unfolds>
        </div>
      )}
      {after && (
        <div class="note">
          <strong>Brought up a meal on {dateWords(after.night)}</strong>
          <p class="small">
            {after.kept === 0
              ? `No food and no handling until ${dateWords(after.restUntil)}, then a small meal.`
              : `Kept ${after.kept} of ${after.of} meals since. The next not before ${dateWords(after.nextFrom)}, and less than usual.`}
          </p>
        </div>
      )}
    </section>
  );
}

function OwnPlan({ view, more }: { readonly view: AnimalView; readonly more: WeightView }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <section class="stack">
      <h2>Its own feeding</h2>
      {more.exceptions.length === 0 ? (
        <p class="quiet">Fed as its class.</p>
      ) : (
        <ul>
          {more.exceptions.map((each) => (
            <li key={exceptionWords(each)}>{exceptionWords(each)}</li>
          ))}
        </ul>
      )}
      <button type="button" class="pill" onClick={() => setIsOpen(true)}>
        <Icon name="feed" /> Feed it otherwise
      </button>
      {isOpen && (
        <ExceptionForm
          id={view.id}
          name={view.name}
          exceptions={more.exceptions}
          onClose={() => setIsOpen(false)}
        />
      )}
    </section>
  );
}

function Readiness({ view, more }: { readonly view: AnimalView; readonly more: WeightView }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <section class="stack">
      <h2>Ready to breed?</h2>
      <dl class="facts">
        {more.readiness.map(({ what, says, isMet }) => (
          <div key={what}>
            <dt>
              {isMet !== undefined && <Icon name={isMet ? 'check' : 'hold'} />} {what}
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <button type="button" class="pill" onClick={() => setIsOpen(true)}>
        Started smaller, because …
      </button>
      {isOpen && <SmallerForm id={view.id} name={view.name} onClose={() => setIsOpen(false)} />}
    </section>
  );
}
