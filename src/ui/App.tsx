import { useEffect, useState } from 'preact/hooks';
import type { AnimalId, TubId } from '../domain/core/ids.ts';
import { Frame, type Updates } from './Frame.tsx';
import { lazy } from './lazy.tsx';
import { ModelContext, useStatus, type Model } from './model.ts';
import { remembered } from './remember.ts';
import { looksLikeCode, parts } from './route.ts';
import { CodeScreen, SnakeScreen, TubScreen } from './screens/CaptureScreens.tsx';
import { TonightScreen } from './screens/TonightScreen.tsx';
import { useTonightAhead } from './tonight.ts';
import './app.css';
import './components/components.css';

const loadRound = async () => (await import('./screens/RoundScreen.tsx')).RoundScreen;
const RoundScreen = lazy(loadRound);
const loadOther = async () => (await import('./screens/OtherScreen.tsx')).OtherScreen;
const OtherScreen = lazy(loadOther);
const StartScreen = lazy(async () => (await import('./screens/StartScreen.tsx')).StartScreen);

const FETCH_ROUND_AFTER_MS = 1_000;

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
  const status = useStatus();
  const [place = 'tonight'] = parts.value;
  useTonightAhead(status === undefined, place === 'tonight');
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
    <Frame route={parts.value} status={status} updates={updates}>
      <Screen />
    </Frame>
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
