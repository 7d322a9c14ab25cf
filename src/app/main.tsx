import { render } from 'preact';
import { App } from '../ui/App.tsx';
import '../ui/tokens.css';
import '../ui/base.css';
import { applyLight } from '../ui/light.ts';
import { createModel } from '../ui/model.ts';
import { remembered } from '../ui/remember.ts';
import { createDeskClient } from './desk-client.ts';
import { watchForUpdates } from './updates.ts';

applyLight();

const desk = createDeskClient(
  new Worker(new URL('../worker/worker.ts', import.meta.url), { type: 'module', name: 'desk' }),
);
const opened = await desk.tell('open', remembered('collection') === 'demo' ? 'demo' : 'own');
const model = createModel(desk, opened);

const root = document.getElementById('app');
root?.replaceChildren(); // The words for a browser that never gets here.
if (root) render(<App model={model} updates={watchForUpdates()} />, root);

// Asked once records are worth keeping; the answer is shown beside the backup.
void (async () => {
  const storage = navigator.storage as StorageManager | undefined;
  model.storageKept.value =
    (await storage?.persisted?.()) === true || (await storage?.persist?.()) === true;
})();

document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') void desk.tell('wake', null);
});
