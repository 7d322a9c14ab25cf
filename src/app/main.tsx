import { desk } from './start-desk.ts';
import { hydrate, render } from 'preact';
import { App } from '../ui/App.tsx';
import '../ui/tokens.css';
import '../ui/base.css';
import { keepLastSeen } from '../ui/keep-last-seen.ts';
import { isAtTonight, openedLast } from '../ui/last-seen.ts';
import { followLight } from '../ui/light.ts';
import { unitIsHere } from '../ui/mass-unit.ts';
import { createModel } from '../ui/model.ts';
import { remembered } from '../ui/remember.ts';
import { RemindersContext } from '../ui/reminders.ts';
import { watchForUpdates } from './updates.ts';

followLight();

/** A hash over what works out and draws the lists, put in by vite.config.ts. */
declare const PAGE_BUILD: string;

const collection = openedLast();
const opening = desk.tell('open', collection);
// The page is drawn while the desk opens; what it watches comes as soon as there is something to see.
const { lastSeen } = window;
const model = createModel(desk, { collection, lastSeen });
keepLastSeen(desk, PAGE_BUILD, () => {
  model.lastSeen.value = undefined;
});
opening.catch(model.failWith);

const loadReminders = async () => (await import('./reminders.ts')).createReminders(desk);
const app = (
  <RemindersContext.Provider value={loadReminders}>
    <App model={model} updates={watchForUpdates()} />
  </RemindersContext.Provider>
);
const root = document.getElementById('app');
const isShown = lastSeen?.isShown === true;

function draw(): void {
  if (root && isShown && isAtTonight()) {
    hydrate(app, root); // What a thumb is on by then stays in its place.
  } else if (root) {
    root.replaceChildren(); // Another screen is asked for.
    render(app, root);
  }
}

// Not awaited here: what says masses in pounds imports from this very piece of the program.
if (isShown) void unitIsHere.then(draw);
else draw();
if (remembered('reminders') === 'on') {
  void opening.then(async () => (await import('./reminders.ts')).keepIcon(desk));
}

// Asked once records are worth keeping; the answer is shown beside the backup.
void (async () => {
  const storage = navigator.storage as StorageManager | undefined;
  model.storageKept.value =
    (await storage?.persisted?.()) === true || (await storage?.persist?.()) === true;
})();

document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') void desk.tell('wake', null);
});
