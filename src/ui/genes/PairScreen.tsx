import { useState } from 'preact/hooks';
import type { PairView } from '../../domain/views/pair-view.ts';
import { Stepper } from '../capture/Stepper.tsx';
import '../capture/forms.css';
import { CautionList } from '../choosing/CautionList.tsx';
import '../choosing/choosing.css';
import { ReasonForm } from '../choosing/ReasonForm.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { KinLine } from '../lineage/KinLine.tsx';
import '../lineage/lineage.css';
import { useDraft } from '../model.ts';
import { useLater } from '../protocol/use-later.ts';
import { remember, remembered } from '../remember.ts';
import { Page } from '../screens/Page.tsx';
import './genes.css';
import { Looks } from './Looks.tsx';
import { PairSides } from './PairSides.tsx';
import { readPairRoute, sideOf } from './pair-route.ts';
import { usePairView } from './use-pair-view.ts';

/** The same number as where pairs are ranked. */
const YOUNG = 'choose-young';
const USUAL_YOUNG = 6;
const MOST_YOUNG = 20;

/** What a real or an imagined pair can give. What to know comes first. */
export function PairScreen({ route: parts }: { readonly route: readonly string[] }) {
  const route = readPairRoute(parts);
  const [femaleWords, setFemaleWords] = useDraft('pair.female');
  const [maleWords, setMaleWords] = useDraft('pair.male');
  const [wish, setWish] = useDraft('pair.wish');
  const [young, setYoung] = useState(Number(remembered(YOUNG) ?? USUAL_YOUNG));
  const ask = useLater({
    female: sideOf(route.female, femaleWords),
    males: route.males.map((id) => sideOf(id, maleWords)),
    young,
    wish,
  });
  const view = usePairView(ask, parts.join('/'));
  return (
    <Page title="A pair’s young" back>
      <PairSides
        route={route}
        view={view}
        words={{ female: femaleWords, male: maleWords }}
        onFemale={setFemaleWords}
        onMale={setMaleWords}
      />
      {view ? <Warnings view={view} /> : <p aria-busy="true">Reckoning…</p>}
      <Stepper
        label="Hatched young"
        count={young}
        most={MOST_YOUNG}
        onStep={(by) => {
          const next = Math.min(MOST_YOUNG, Math.max(1, young + by));
          remember(YOUNG, String(next));
          setYoung(next);
        }}
      />
      {view && (
        <>
          {view.lost !== undefined && <p class="note note-warn">{view.lost}</p>}
          <Looks looks={view.looks} rarer={view.rarer} young={view.young} />
          <section class="stack">
            <h2>What you hope for</h2>
            <label>
              A trait or several
              <input
                value={wish}
                maxLength={200}
                autocomplete="off"
                autocapitalize="off"
                onInput={({ currentTarget }) => setWish(currentTarget.value)}
              />
            </label>
            <p class="quiet small">For example: female pastel clown. Or: het pied.</p>
            <Wish wish={view.wish} />
          </section>
          <Grounds view={view} />
        </>
      )}
    </Page>
  );
}

function Warnings({ view }: { readonly view: PairView }) {
  const { cautions, deference, reasoned, female, males, kin, limits } = view;
  const [male, other] = males;
  const pair =
    female.who && male?.who && !other
      ? { female: female.who, male: male.who, cautions, reasoned }
      : undefined;
  return (
    <section class="stack" aria-label="What to know first">
      {cautions.length > 0 && (
        <>
          <h2>What to know first</h2>
          <CautionList cautions={cautions} />
          {reasoned !== undefined && <p class="small">Your reason: {reasoned}</p>}
          {pair && (
            <Unfolds summary={reasoned === undefined ? 'Pair them for a reason' : 'Another reason'}>
              {() => <ReasonForm pair={pair} />}
            </Unfolds>
          )}
          <p class="quiet small">{deference}</p>
        </>
      )}
      {kin.map(({ with: name, words }) => (
        <div key={name}>
          {kin.length > 1 && <p class="small">With {name}:</p>}
          <KinLine kin={words} limits={limits} />
        </div>
      ))}
    </section>
  );
}

function Wish({ wish }: Pick<PairView, 'wish'>) {
  if (!wish) return null;
  if (wish.kind === 'not understood') {
    return (
      <p class="note note-warn" role="status">
        {wish.problem}
      </p>
    );
  }
  return (
    <div role="status">
      <p>
        <strong>{wish.of}</strong>
      </p>
      {wish.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

const Grounds = ({ view: { grounds, assumed } }: { readonly view: PairView }) => (
  <Unfolds summary="What this rests on">
    {() => (
      <div class="because">
        {assumed.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {grounds.map(({ says, grade, sources }) => (
          <p key={says}>
            {says} Known from: {grade}. {sources.join(' ')}
          </p>
        ))}
      </div>
    )}
  </Unfolds>
);
