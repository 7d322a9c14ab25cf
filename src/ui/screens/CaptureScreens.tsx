import { useEffect } from 'preact/hooks';
import { readTypedCode, type LabelCode } from '../../domain/core/code.ts';
import type { AnimalId, TubId } from '../../domain/core/ids.ts';
import type { CaptureView, Found } from '../../domain/views/capture-view.ts';
import { CapturePanel } from '../capture/CapturePanel.tsx';
import { Icon } from '../components/Icon.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { routeOf } from '../found-route.ts';
import { useView } from '../model.ts';
import { goBack, goInstead } from '../route.ts';

/** The capture screen of a label, as a link opens it. */
export function CodeScreen({ text }: { readonly text: string }) {
  const code = readTypedCode(text);
  return code.ok ? <KnownCode code={code.value} /> : <Misread message={code.problem.message} />;
}

function KnownCode({ code }: { readonly code: LabelCode }) {
  const found = useView('code', code);
  if (!found) return <main class="capture-screen" />;
  switch (found.kind) {
    case 'capture':
      return <CaptureScreen view={found.view} />;
    case 'unknown':
    case 'unassigned':
      return <NotHere found={found} />;
    default:
      return <Elsewhere found={found} />;
  }
}

/** A room's, an incubator's or an egg box's label leads to the screen of that. */
function Elsewhere({ found }: { readonly found: Found }) {
  const route = routeOf(found);
  useEffect(() => {
    if (route !== undefined) goInstead(route);
  }, [route]);
  return <main class="page" aria-busy="true" />;
}

/** The capture screen of a tub. */
export function TubScreen({ id }: { readonly id: TubId }) {
  const view = useView('tub', id);
  return view ? <CaptureScreen view={view} /> : <main class="capture-screen" />;
}

/** The capture screen of a snake, wherever it is. */
export function SnakeScreen({ id }: { readonly id: AnimalId }) {
  const view = useView('snake', id);
  return view ? <CaptureScreen view={view} /> : <main class="capture-screen" />;
}

const CaptureScreen = ({ view }: { readonly view: CaptureView }) => (
  <main class="capture-screen">
    <nav class="capture-nav" aria-label="Round">
      <button type="button" class="pill" onClick={goBack}>
        <Icon name="back" />
        Back
      </button>
      <a class="pill" href="#/round">
        <Icon name="round" />
        Scan
      </a>
      {view.next && (
        <a class="pill" href={`#/tub/${view.next.tub}`}>
          {view.next.position}
          <Icon name="next" />
          <span class="hidden-words">next tub tonight</span>
        </a>
      )}
    </nav>
    <CapturePanel view={view} key={view.tub ?? view.occupants[0]?.id} />
  </main>
);

/** A code that leads nowhere here, and the ways on. */
const NotHere = ({
  found,
}: {
  readonly found: Extract<Found, { kind: 'unknown' | 'unassigned' }>;
}) => (
  <main class="page">
    <h1>{found.kind === 'unknown' ? 'This label is not in this collection' : 'A free label'}</h1>
    <p>
      {found.kind === 'unknown' ? (
        <>
          The code {found.code} reads well, but no tub or card here has it. If your records live in
          the installed app, open that and scan there. Nothing new was started.
        </>
      ) : (
        <>The code {found.code} was printed, and belongs to no tub or snake yet.</>
      )}
    </p>
    <WaysOn />
  </main>
);

const Misread = ({ message }: { readonly message: string }) => (
  <main class="page">
    <h1>That code does not read</h1>
    <p>{message}</p>
    <WaysOn />
  </main>
);

const WaysOn = () => (
  <>
    <SlabLink icon="round" kind="main" href="#/round">
      Scan another
    </SlabLink>
    <SlabLink icon="find" href="#/find">
      Find by name or position
    </SlabLink>
    <SlabLink icon="safe" href="#/safe">
      Take in a backup
    </SlabLink>
  </>
);
