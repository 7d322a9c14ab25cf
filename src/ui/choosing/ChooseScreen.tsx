import { useState } from 'preact/hooks';
import { Stepper } from '../capture/Stepper.tsx';
import '../capture/forms.css';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft, useView } from '../model.ts';
import { remember, remembered } from '../remember.ts';
import { Page } from '../screens/Page.tsx';
import './choosing.css';
import { PairCard } from './PairCard.tsx';

const ASKED = 'choose-asked';
const YOUNG = 'choose-young';
/** A clutch of 5 to 8 eggs is usual; the keeper’s own number stands once it is set. */
const USUAL_YOUNG = 6;
const MOST_YOUNG = 20;

/** Which pairs of the collection come nearest to what is wanted. */
export function ChooseScreen() {
  const [text, setText] = useDraft('choose');
  const [asked, setAsked] = useState(remembered(ASKED) ?? '');
  const [young, setYoung] = useState(Number(remembered(YOUNG) ?? USUAL_YOUNG));
  const [readyOnly, setReadyOnly] = useState(false);
  const ask = () => {
    remember(ASKED, text);
    setAsked(text);
  };
  const step = (by: 1 | -1) => {
    const next = Math.min(MOST_YOUNG, Math.max(1, young + by));
    remember(YOUNG, String(next));
    setYoung(next);
  };
  return (
    <Page title="Choose pairs" back>
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          ask();
        }}
      >
        <label>
          What do you want?
          <input
            value={text}
            maxLength={200}
            autocomplete="off"
            autocapitalize="off"
            onInput={({ currentTarget }) => setText(currentTarget.value)}
          />
        </label>
        <p class="quiet small">
          For example: visual clown pied. Or: female pastel het clown. Or: prove the 66 % het of
          Sorrel.
        </p>
        <Stepper label="Hatched young in a clutch" count={young} most={MOST_YOUNG} onStep={step} />
        <Slab icon="pair" kind="main" onPress={ask}>
          Rank the pairs
        </Slab>
      </form>
      <a class="row-link" href="#/pair">
        <Icon name="eggs" /> One pair’s young, real or imagined
      </a>
      {asked !== '' && (
        <>
          <div class="chips" role="group" aria-label="Which pairs">
            <button
              type="button"
              class="pill"
              aria-pressed={!readyOnly}
              onClick={() => setReadyOnly(false)}
            >
              All
            </button>
            <button
              type="button"
              class="pill"
              aria-pressed={readyOnly}
              onClick={() => setReadyOnly(true)}
            >
              Ready ones
            </button>
          </div>
          <Ranking goal={asked} young={young} readyOnly={readyOnly} />
        </>
      )}
    </Page>
  );
}

function Ranking(ask: {
  readonly goal: string;
  readonly young: number;
  readonly readyOnly: boolean;
}) {
  const view = useView('choose', ask);
  if (!view) return <p aria-busy="true">Looking at all pairs…</p>;
  if (view.kind === 'not understood') {
    return (
      <p class="note note-warn" role="status">
        {view.problem}
      </p>
    );
  }
  return (
    <section class="stack">
      <h2>{view.goal.join(' · ')}</h2>
      <p role="status">{view.counts}</p>
      {view.pairs.length === 0 && (
        <p class="note">
          No pair of yours can give this in one clutch. Try one part of it, or carriers: “het clown
          het pied”.
        </p>
      )}
      <ol class="stack">
        {view.pairs.map((pair) => (
          <PairCard key={`${pair.female.id}${pair.male.id}`} pair={pair} limits={view.limits} />
        ))}
      </ol>
      <p class="quiet small">{view.deference}</p>
    </section>
  );
}
