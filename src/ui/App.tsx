import { useEffect, useState } from 'preact/hooks';
import type { AnimalId, TubId } from '../domain/core/ids.ts';
import type { DeskStatus } from '../domain/desk.ts';
import { Icon, type IconName } from './components/Icon.tsx';
import { lazy } from './lazy.tsx';
import { ModelContext, useModel, useView, type Model } from './model.ts';
import { remembered } from './remember.ts';
import { looksLikeCode, parts } from './route.ts';
import { CodeScreen, SnakeScreen, TubScreen } from './screens/CaptureScreens.tsx';
import { Asking } from './screens/Notices.tsx';
import { TonightScreen } from './screens/TonightScreen.tsx';
import './app.css';
import './components/components.css';

const loadRound = async () => (await import('./screens/RoundScreen.tsx')).RoundScreen;
const RoundScreen = lazy(loadRound);
const loadOther = async () => (await import('./screens/OtherScreen.tsx')).OtherScreen;
const OtherScreen = lazy(loadOther);
const StartScreen = lazy(async () => (await import('./screens/StartScreen.tsx')).StartScreen);

const FETCH_ROUND_AFTER_MS = 1_000;

/** What the shell tells of a waiting new version. */
export interface Updates {
  readonly ready: { readonly value: boolean };
  readonly apply: () => void;
}

export function App({ model, updates }: { readonly model: Model; readonly updates: Updates }) {
  const [begun, setBegun] = useState(remembered('begun') === 'yes');
  return (
    <ModelContext.Provider value={model}>
      <Shell isBegun={begun} onBegun={() => setBegun(true)} updates={updates} />
    </ModelContext.Provider>
  );
}

function Shell({
  isBegun,
  onBegun,
  updates,
}: {
  readonly isBegun: boolean;
  readonly onBegun: () => void;
  readonly updates: Updates;
}) {
  const { lastSeen } = useModel();
  const status = useView('status', null) ?? lastSeen.value?.status;
  // The round must open at once, though the first screen need not wait for it.
  useEffect(() => {
    const timer = setTimeout(() => {
      loadRound().catch(() => undefined);
      loadOther().catch(() => undefined);
    }, FETCH_ROUND_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
  const isNew = !isBegun && status !== undefined && status.records === 0;
  if (!status) return <main class="page" aria-busy="true" />;
  // A scanned link in a browser without the records must never begin an empty collection.
  if (isNew && !looksLikeCode(parts.value)) return <StartScreen onBegun={onBegun} />;
  return (
    <>
      <Banners status={status} updates={updates} />
      <Screen />
      <Asking />
      <Nav />
    </>
  );
}

function Screen() {
  const [first = '', second = ''] = parts.value;
  if (looksLikeCode(parts.value)) return <CodeScreen text={first} />;
  switch (first) {
    case '':
    case 'tonight':
      return <TonightScreen />;
    case 'round':
      return <RoundScreen />;
    case 'tub':
      return <TubScreen id={second as TubId} />;
    case 'snake':
      return <SnakeScreen id={second as AnimalId} />;
    default:
      return <OtherScreen route={parts.value} />;
  }
}

const places: readonly (readonly [string, string, IconName])[] = [
  ['tonight', 'Tonight', 'tonight'],
  ['racks', 'Racks', 'racks'],
  ['round', 'Round', 'round'],
  ['find', 'Find', 'find'],
  ['shelf', 'Shelf', 'shelf'],
];

/** Where the whole hand is needed for writing, and nothing else may take room. */
const isAtTub = (): boolean =>
  ['round', 'tub', 'snake'].includes(parts.value[0] ?? '') || looksLikeCode(parts.value);

function Nav() {
  const [first = 'tonight'] = parts.value;
  // The labels screen keeps its own bar at the foot.
  if (isAtTub() || first === 'labels') return null;
  return (
    <nav class="places" aria-label="Places">
      {places.map(([to, word, icon]) => (
        <a
          key={to}
          href={`#/${to}`}
          class={to === 'round' ? 'place-main' : undefined}
          aria-current={first === to ? 'page' : undefined}
        >
          <Icon name={icon} />
          {word}
        </a>
      ))}
    </nav>
  );
}

function Banners({ status, updates }: { readonly status: DeskStatus; readonly updates: Updates }) {
  return (
    <aside class="banners" aria-label="News of the app">
      {status.collection === 'demo' && <DemoBanner />}
      {status.inMemoryOnly && (
        <a class="banner" href="#/safe">
          <Icon name="alarm" />
          <span>This window keeps nothing. Read what to do.</span>
        </a>
      )}
      {updates.ready.value && (
        <div class="banner" role="status">
          <span>A new version is here. Half-filled forms are kept.</span>
          <button type="button" class="pill" onClick={updates.apply}>
            Change to it
          </button>
        </div>
      )}
      {status.backupDue && parts.value[0] !== 'safe' && isQuietPlace() && (
        <a class="banner" href="#/safe">
          <Icon name="safe" />
          <span>No backup for a week. Make one: two taps.</span>
        </a>
      )}
    </aside>
  );
}

/** A nudge belongs where one plans, not where one works. */
const isQuietPlace = (): boolean => ['tonight', 'shelf', undefined].includes(parts.value[0]);

function DemoBanner() {
  return (
    <div class={`banner banner-demo${isAtTub() ? ' banner-thin' : ''}`}>
      <span>Demo, invented</span>
      {!isAtTub() && <EraseDemo />}
    </div>
  );
}

function EraseDemo() {
  const model = useModel();
  return (
    <button type="button" class="pill" onClick={() => void model.eraseDemo()}>
      Erase the demo
    </button>
  );
}
