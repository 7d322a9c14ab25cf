import {
  isAtTonight,
  LAST_SEEN,
  openedLast,
  readLastSeen,
  type LastSeen,
} from '../ui/last-seen.ts';
import { applyLight, chosenLight } from '../ui/lights.ts';
import { remembered } from '../ui/remember.ts';
import { painted } from './painted.ts';

// Stands in the page itself, ahead of the program, which a slow phone needs a second to fetch and
// start: the room's light, and tonight as it was last worked out. Its links lead on once the program
// is there. vite.config.ts puts it in and names it in the content security policy.

declare global {
  interface Window {
    /** What the program draws first, and whether it stands there already. */
    lastSeen?: LastSeen & { readonly isShown: boolean };
    /** Started ahead of the program that speaks with it. */
    desk?: Worker;
  }
}

/** A hash over what works out and draws the lists, put in by vite.config.ts. */
declare const PAGE_BUILD: string;

/** Where the program lies, put in by vite.config.ts. */
declare const PROGRAM: string;

/** And where its desk does; undefined where the page is served from its sources. */
declare const DESK: string | undefined;

applyLight(chosenLight(remembered('light')));

const lastSeen = readLastSeen(remembered(LAST_SEEN), {
  build: PAGE_BUILD,
  collection: openedLast(),
  clock: { ms: Date.now(), offsetMin: -new Date().getTimezoneOffset() },
});
const root = document.getElementById('app');
const isShown = lastSeen !== undefined && isAtTonight();
if (root && lastSeen) {
  if (isShown) root.innerHTML = lastSeen.html;
  window.lastSeen = { ...lastSeen, isShown };
}

function startApp(): void {
  // It says nothing until it is asked, so nothing is missed before the program listens.
  if (DESK !== undefined) window.desk = new Worker(DESK, { type: 'module', name: 'desk' });
  const program = document.createElement('script');
  program.type = 'module';
  program.src = PROGRAM;
  document.head.append(program);
}

if (isShown) void painted().then(startApp);
else startApp();
