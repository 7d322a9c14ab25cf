import type { ComponentChildren } from 'preact';
import type { DeskStatus } from '../domain/desk.ts';
import { Icon, type IconName } from './components/Icon.tsx';
import { useModel } from './model.ts';
import { looksLikeCode } from './route.ts';
import { Asking } from './screens/Notices.tsx';

/** What the shell tells of a waiting new version. */
export interface Updates {
  readonly ready: { readonly value: boolean };
  readonly apply: () => void;
}

type Route = readonly string[];

interface Around {
  readonly route: Route;
  readonly status: DeskStatus;
  readonly updates: Updates;
}

/** What stands around a screen: news of the app above it, the places below. */
export const Frame = ({
  children,
  ...around
}: Around & { readonly children: ComponentChildren }) => (
  <>
    <Banners {...around} />
    {children}
    <Asking />
    <Nav route={around.route} />
  </>
);

const places: readonly (readonly [string, string, IconName])[] = [
  ['tonight', 'Tonight', 'tonight'],
  ['racks', 'Racks', 'racks'],
  ['round', 'Round', 'round'],
  ['find', 'Find', 'find'],
  ['shelf', 'Shelf', 'shelf'],
];

/** Where the whole hand is needed for writing, and nothing else may take room. */
const isAtTub = (route: Route): boolean =>
  ['round', 'tub', 'snake'].includes(route[0] ?? '') || looksLikeCode(route);

function Nav({ route }: { readonly route: Route }) {
  const [first = 'tonight'] = route;
  // The labels screen keeps its own bar at the foot.
  if (isAtTub(route) || first === 'labels') return null;
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

function Banners({ route, status, updates }: Around) {
  return (
    <aside class="banners" aria-label="News of the app">
      {status.collection === 'demo' && <DemoBanner isThin={isAtTub(route)} />}
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
      {status.backupDue && route[0] !== 'safe' && isQuietPlace(route) && (
        <a class="banner" href="#/safe">
          <Icon name="safe" />
          <span>No backup for a week. Make one: two taps.</span>
        </a>
      )}
    </aside>
  );
}

/** A nudge belongs where one plans, not where one works. */
const isQuietPlace = ([first]: Route): boolean => ['tonight', 'shelf', undefined].includes(first);

const DemoBanner = ({ isThin }: { readonly isThin: boolean }) => (
  <div class={`banner banner-demo${isThin ? ' banner-thin' : ''}`}>
    <span>Demo, invented</span>
    {!isThin && <EraseDemo />}
  </div>
);

function EraseDemo() {
  const model = useModel();
  return (
    <button type="button" class="pill" onClick={() => void model.eraseDemo()}>
      Erase the demo
    </button>
  );
}
