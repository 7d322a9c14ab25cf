import { useEffect, useState } from 'preact/hooks';
import { readScannedText, type LabelCode } from '../../domain/core/code.ts';
import type { TubId } from '../../domain/core/ids.ts';
import { CapturePanel } from '../capture/CapturePanel.tsx';
import { Icon } from '../components/Icon.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { routeOf } from '../found-route.ts';
import { go } from '../route.ts';
import { Viewfinder } from '../round/Viewfinder.tsx';
import { Keypad } from '../round/Keypad.tsx';
import { Notices } from './Notices.tsx';

type At =
  | { readonly kind: 'code'; readonly code: LabelCode }
  | { readonly kind: 'tub'; readonly tub: TubId };

/**
 * The round: the camera stays open above, the tub in hand below. Scan, tap, buzz, next tub.
 */
export function RoundScreen() {
  const model = useModel();
  const [at, setAt] = useState<At>();
  const [isTyping, setIsTyping] = useState(false);
  const byCode = useView('code', at?.kind === 'code' ? at.code : ('' as LabelCode));
  const byTub = useView('tub', at?.kind === 'tub' ? at.tub : ('' as TubId));
  const tonight = useView('tonight', null);

  const heard = (text: string) => {
    // A form half filled for this snake must not turn into one for its neighbour.
    if (document.querySelector('dialog[open]')) return;
    const code = readScannedText(text);
    if (code.ok) {
      model.trouble.value = undefined;
      setAt({ kind: 'code', code: code.value });
    } else {
      model.fail(code.problem.message, 'Scan a tub or a card, or type its position.');
    }
  };

  const found = at?.kind === 'code' ? byCode : undefined;
  useEffect(() => {
    const elsewhere = found && routeOf(found);
    if (elsewhere !== undefined) go(elsewhere);
  }, [found]);
  const view = found?.kind === 'capture' ? found.view : at?.kind === 'tub' ? byTub : undefined;
  const first = tonight?.stops.find(({ tub }) => tub !== undefined);
  const next = view ? view.next : first?.tub && { tub: first.tub, position: first.position };

  return (
    <main class="round">
      <h1 class="hidden-words">Round</h1>
      <Viewfinder onText={heard} isSmall={view !== undefined}>
        <a class="pill" href="#/tonight">
          <Icon name="back" />
          End
        </a>
        <button type="button" class="pill" onClick={() => setIsTyping(true)}>
          <Icon name="keypad" />
          Type
        </button>
        {next && (
          <button type="button" class="pill" onClick={() => setAt({ kind: 'tub', tub: next.tub })}>
            {next.position}
            <Icon name="next" />
            <span class="hidden-words">next tub tonight, without scanning</span>
          </button>
        )}
      </Viewfinder>
      {view ? (
        <CapturePanel view={view} key={view.tub ?? view.occupants[0]?.id} />
      ) : (
        <section class="round-wait">
          {found?.kind === 'unknown' || found?.kind === 'unassigned' ? (
            <>
              <p>
                {found.kind === 'unknown'
                  ? `The code ${found.code} reads well, but it is not in this collection.`
                  : `The code ${found.code} belongs to no tub or snake yet.`}
              </p>
              <SlabLink icon="find" href="#/find">
                Find by name or position
              </SlabLink>
            </>
          ) : (
            <p class="quiet">
              Hold the camera on a tub’s label.
              {next && <> Tonight begins at {next.position}.</>}
            </p>
          )}
          <Notices />
        </section>
      )}
      {isTyping && (
        <Keypad
          onClose={() => setIsTyping(false)}
          onCode={(code) => {
            setIsTyping(false);
            setAt({ kind: 'code', code });
          }}
          onTub={(tub) => {
            setIsTyping(false);
            setAt({ kind: 'tub', tub });
          }}
        />
      )}
    </main>
  );
}
