import { useEffect, useState } from 'preact/hooks';
import { readScannedText, type LabelCode } from '../../domain/core/code.ts';
import type { TubId } from '../../domain/core/ids.ts';
import type { Move } from '../../domain/views/moves-view.ts';
import { Icon } from '../components/Icon.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { Keypad } from '../round/Keypad.tsx';
import { Viewfinder } from '../round/Viewfinder.tsx';
import { Page } from '../screens/Page.tsx';
import { MoveLine } from './MoveLine.tsx';
import { moveDraft, stepAt } from './move-steps.ts';
import { TogetherLine } from './TogetherLine.tsx';
import './rotation.css';

/** Tonight's moves: his tub, her tub, and it is written down. */
export function MovesScreen() {
  const model = useModel();
  const view = useView('moves', null);
  const [isScanning, setIsScanning] = useState(false);
  const [isTyping, setIsTyping] = useState(false);
  const [begun, setBegun] = useState<Move>();
  const [code, setCode] = useState<LabelCode>();
  const found = useView('code', code ?? ('' as LabelCode));

  const write = (move: Move) => {
    setBegun(undefined);
    void model.write({
      drafts: [moveDraft(move)],
      tub: move.female.tub,
      words: `${move.male.name} ${move.kind === 'in' ? 'in with' : 'home from'} ${move.female.name}`,
    });
  };
  const atTub = (tub: TubId) => {
    const step = stepAt(tub, view?.moves ?? [], begun);
    if (step.kind === 'begun') setBegun(step.move);
    else if (step.kind === 'done') write(step.move);
    else model.fail(step.says, 'Scan again, or type the position.');
  };
  useEffect(() => {
    if (code === undefined || !found) return;
    setCode(undefined);
    const tub = found.kind === 'capture' ? found.view.tub : undefined;
    if (tub === undefined) model.fail('That label is no tub’s.', 'Scan a tub.');
    else atTub(tub);
  }, [found]);
  const heard = (text: string) => {
    const read = readScannedText(text);
    if (read.ok) setCode(read.value);
    else model.fail(read.problem.message, 'Scan a tub, or type its position.');
  };
  if (!view) return <Page title="Tonight’s moves" back />;
  return (
    <Page title="Tonight’s moves" back>
      {view.isAway && <p class="note">You said that nobody is there this evening.</p>}
      {view.missed.length > 0 && (
        <section class="note note-warn" aria-label="Missed">
          <ul>
            {view.missed.map((says) => (
              <li key={says}>{says}</li>
            ))}
          </ul>
          <a href="#/rotation/plan">See the new plan</a>
        </section>
      )}
      {isScanning && (
        <Viewfinder onText={heard} isSmall>
          <button type="button" class="pill" onClick={() => setIsScanning(false)}>
            Close
          </button>
        </Viewfinder>
      )}
      {view.moves.length > 0 && (
        <div class="chips">
          {!isScanning && (
            <button type="button" class="pill" onClick={() => setIsScanning(true)}>
              <Icon name="camera" /> Scan
            </button>
          )}
          <button type="button" class="pill" onClick={() => setIsTyping(true)}>
            <Icon name="keypad" /> Type
          </button>
        </div>
      )}
      {begun && (
        <p class="note" role="status">
          {begun.male.name} is in hand. Now the tub {afterFirst(begun)}.{' '}
          <button type="button" class="pill" onClick={() => setBegun(undefined)}>
            Not this one
          </button>
        </p>
      )}
      {view.moves.length === 0 && (
        <p class="note">
          {view.hasPlan ? 'No male is to be moved tonight.' : 'No plan is kept yet.'}
        </p>
      )}
      <ol class="stack" aria-label="Moves">
        {view.moves.map((move) => (
          <MoveLine
            key={move.kind + move.male.id}
            move={move}
            isBegun={begun?.male.id === move.male.id}
            onDone={() => write(move)}
          />
        ))}
      </ol>
      {view.together.length > 0 && (
        <section class="stack">
          <h2>Together now</h2>
          <ol class="stack" aria-label="Together now">
            {view.together.map((pair) => (
              <TogetherLine key={pair.male.id} pair={pair} />
            ))}
          </ol>
        </section>
      )}
      <div class="two">
        <SlabLink icon="pair" href="#/rotation/plan">
          The plan
        </SlabLink>
        <SlabLink icon="tonight" href="#/tonight">
          Tonight’s list
        </SlabLink>
      </div>
      {isTyping && (
        <Keypad
          onClose={() => setIsTyping(false)}
          onCode={(typed) => {
            setIsTyping(false);
            setCode(typed);
          }}
          onTub={(tub) => {
            setIsTyping(false);
            atTub(tub);
          }}
        />
      )}
    </Page>
  );
}

const afterFirst = ({ kind, male, female }: Move): string =>
  kind === 'in' ? `${female.position} of ${female.name}` : `${male.position}, his own`;
