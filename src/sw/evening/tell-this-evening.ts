import { momentOf, type Clock } from '../../domain/core/calendar.ts';
import { eveningView, type EveningView } from '../../domain/views/evening-view.ts';
import { createIdbLog } from '../../store/idb-log.ts';
import { createPictureShelf } from '../../store/picture-shelf.ts';
import { createToldNote } from '../../store/told-note.ts';
import { readPicture } from './read-picture.ts';
import { EVENING_TAG } from '../tag.ts';
import { toldOf, whatToTell } from './what-to-tell.ts';

declare const self: ServiceWorkerGlobalScope;
/** A hash over the domain's source, put in by vite.config.ts. */
declare const BUILD: string;

// The edge of the pure core away from the page. Only the keeper's own collection is named here: the
// demo never reminds anybody of anything.

const log = createIdbLog('nightdrop-log');
const shelf = createPictureShelf('nightdrop-picture', BUILD);
const note = createToldNote('nightdrop-notes');

const clock = (): Clock => {
  const now = new Date();
  return { ms: now.getTime(), offsetMin: -now.getTimezoneOffset() };
};

/** Works out tonight as the page would, and says it: a number on the icon, one notification. */
export async function tellThisEvening(): Promise<void> {
  const now = clock();
  const evening = eveningView(await readPicture(log, shelf, now));
  await putOnIcon(evening.count);
  const say = whatToTell({
    evening,
    told: await note.load(),
    isWatched: await isPageInView(),
    today: momentOf(now).slice(0, 10),
  });
  if (say === 'hush') await hush();
  if (say === 'tell' || say === 'tell quietly') {
    await show(evening, say === 'tell quietly');
    await note.save(toldOf(evening));
  }
}

/** Not every platform has a number to put on an icon. */
async function putOnIcon(count: number): Promise<void> {
  const { navigator } = self as { readonly navigator: Partial<WorkerNavigator> };
  await (count > 0 ? navigator.setAppBadge?.(count) : navigator.clearAppBadge?.());
}

async function isPageInView(): Promise<boolean> {
  const windows = await self.clients.matchAll({ type: 'window' });
  return windows.some(({ visibilityState }) => visibilityState === 'visible');
}

/** The tag makes a new one take the place of the last. */
const show = ({ title, body }: EveningView, isQuiet: boolean): Promise<void> =>
  self.registration.showNotification(title, {
    body,
    tag: EVENING_TAG,
    silent: isQuiet,
    icon: 'icon-192.png',
  });

async function hush(): Promise<void> {
  const shown = await self.registration.getNotifications({ tag: EVENING_TAG });
  for (const each of shown) each.close();
}
