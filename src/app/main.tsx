import { desk } from './start-desk.ts';
import { render } from 'preact';
import { App } from '../ui/App.tsx';
import '../ui/tokens.css';
import '../ui/base.css';
import { LAST_SEEN, keepLastSeen, readLastSeen } from '../ui/last-seen.ts';
import { applyLight, followLight } from '../ui/light.ts';
import { createModel } from '../ui/model.ts';
import { remembered } from '../ui/remember.ts';
import { RemindersContext } from '../ui/reminders.ts';
import { watchForUpdates } from './updates.ts';

applyLight();
followLight();

/** A hash over the domain's source, put in by vite.config.ts. */
declare const BUILD: string;

const collection = remembered('collection') === 'demo' ? 'demo' : 'own';
const opening = desk.tell('open', collection);
// The page is drawn while the desk opens; what it watches comes as soon as there is something to see.
const clock = { ms: Date.now(), offsetMin: -new Date().getTimezoneOffset() };
const lastSeen = readLastSeen(remembered(LAST_SEEN), { build: BUILD, collection, clock });
const model = createModel(desk, { collection, lastSeen });
keepLastSeen(desk, BUILD, () => {
  model.lastSeen.value = undefined;
});
opening.catch(model.failWith);

const root = document.getElementById('app');
root?.replaceChildren(); // The words for a browser that never gets here.
const loadReminders = async () => (await import('./reminders.ts')).createReminders(desk);
if (root) {
  render(
    <RemindersContext.Provider value={loadReminders}>
      <App model={model} updates={watchForUpdates()} />
    </RemindersContext.Provider>,
    root,
  );
}
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
