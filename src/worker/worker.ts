import { momentOf, roomNight, type Clock } from '../domain/core/calendar.ts';
import { Fault } from '../domain/core/fault.ts';
import { createMinter, inBase32, type DeviceId } from '../domain/core/ids.ts';
import type { CollectionName, Commands, DeskStatus } from '../domain/desk.ts';
import { defaultProtocol } from '../domain/protocol/values.ts';
import { openCollection, type Collection, type World } from './collection.ts';
import type { DeskKeeper } from './desk-keeper.ts';
import { deskStatus } from './desk-status.ts';
import { places } from './places.ts';
import type { FromDesk, ToDesk } from './protocol.ts';
import { loadAhead, loadFor, loadMoreViews, loadNight, showView, type Watch } from './watched.ts';

declare const self: DedicatedWorkerGlobalScope;
/** A hash over the domain's source, put in by vite.config.ts. */
declare const BUILD: string;

// The edge of the pure core: the only place that reads the clock, draws chance and names databases.

const databases = { own: 'nightdrop', demo: 'nightdrop-demo' } as const;
const MINUTE_MS = 60_000;
/** Time for a capture screen to be drawn before anything more is fetched. */
const DRAWN_MS = 150;
const SETTLE_AFTER_MS = 4_000;
/** How long nothing has been asked before old records are read: they must not stand in the way. */
const QUIET_MS = 1_000;

const clock = (): Clock => {
  const now = new Date();
  return { ms: now.getTime(), offsetMin: -now.getTimezoneOffset() };
};
const chance = (): number => (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) / 2 ** 32;
const writer = inBase32(Math.floor(chance() * 32 ** 5), 5) as DeviceId;
const minter = createMinter(writer, () => clock().ms);

interface Open {
  readonly name: CollectionName;
  readonly collection: Collection;
  readonly status: () => DeskStatus;
  /** What decides on records and checks them: loaded after the first screens. */
  readonly keeper: () => Promise<DeskKeeper>;
  readonly world: World;
  readonly channel: BroadcastChannel;
}

let open: Promise<Open> | undefined;
/** What is open once it has something to show: opening shows every view that is watched by then. */
let shown: Open | undefined;
let settleTimer: number | undefined;
let historyTimer: number | undefined;
const watched = new Map<number, Watch>();

const send = (message: FromDesk): void => self.postMessage(message);
/** A part of this program that did not come is asked for again when it is needed. */
const tryLater = (): void => undefined;

function pushView(id: number): void {
  const watch = watched.get(id);
  if (!watch || !shown) return;
  const { collection, status } = shown;
  const view = showView(watch, collection.picture, status());
  if (view) send({ is: 'view', id, view: view.shown });
  // Its part of the desk is on its way: it is shown as things stand when that is here.
  else loadFor(watch).then(() => pushView(id), tryLater);
}

async function openByName(name: CollectionName): Promise<Open> {
  const database = databases[name];
  const channel = new BroadcastChannel(database);
  const world: World = {
    build: BUILD,
    ...(await places(database, BUILD)),
    clock,
    chance,
    minter,
    writer,
    alone: (work) => navigator.locks.request(`${database}-writer`, work),
    tellOthers: () => channel.postMessage('grown'),
  };
  let opened: Open | undefined;
  const changed = (): void => {
    if (!opened) return;
    for (const id of watched.keys()) pushView(id);
    settleTimer ??= setTimeout(() => {
      settleTimer = undefined;
      // A full disk stops it here too; what it does is done again after the next change.
      shown?.collection.settle().catch(() => undefined);
    }, SETTLE_AFTER_MS);
  };
  const [collection, notes] = await Promise.all([
    openCollection(world, changed),
    world.notes.load(),
  ]);
  let keeper: DeskKeeper | undefined;
  opened = {
    name,
    collection,
    status: () => keeper?.status() ?? deskStatus(world, collection, name, notes),
    async keeper() {
      const { createDeskKeeper } = await import('./desk-keeper.ts');
      return (keeper ??= createDeskKeeper(world, collection, name, notes, changed));
    },
    world,
    channel,
  };
  shown = opened;
  channel.addEventListener('message', () => void collection.follow());
  changed();
  setTimeout(() => {
    loadNight().then((askByAllRules) => {
      askByAllRules(collection.picture);
      changed();
    }, tryLater);
  }, DRAWN_MS);
  return opened;
}

async function openCommand(name: CollectionName): Promise<Commands['open']['answer']> {
  const before = await open?.catch(() => undefined);
  before?.channel.close();
  shown = undefined;
  open = openByName(name);
  const opened = await open;
  if (name === 'demo' && opened.collection.picture.ledger.subjects.size === 0)
    await fillDemo(opened);
  readHistoryWhenQuiet();
  return opened.status();
}

/** The first screens are shown before the rest of the log follows; each new question puts it off. */
function readHistoryWhenQuiet(): void {
  clearTimeout(historyTimer);
  historyTimer = setTimeout(() => {
    historyTimer = undefined;
    void open?.then(({ collection }) => collection.readHistory());
    // What the next tap and the next screen need, before they do.
    void open?.then(({ keeper }) => keeper()).catch(tryLater);
    loadMoreViews().catch(tryLater);
  }, QUIET_MS);
}

async function fillDemo({ collection, world }: Open): Promise<void> {
  const [{ simulate }, { demoScenario }, { demoBuyers }] = await Promise.all([
    import('../../demo-data/simulate.ts'),
    import('../../demo-data/scenario.ts'),
    import('../../demo-data/buyers.ts'),
  ]);
  const now = clock();
  const night = roomNight(momentOf(now), defaultProtocol.rolloverHour);
  await collection.write(simulate(demoScenario(night, now.offsetMin)));
  const buyers = await world.buyers();
  for (const buyer of demoBuyers(night)) await buyers.keep(buyer);
}

async function eraseDemo(): Promise<null> {
  const before = await open;
  if (before?.name === 'demo') {
    before.channel.close();
    await Promise.all([
      before.world.log.erase(),
      before.world.shelf.clear(),
      before.world.notes.clear(),
      before.world.photos().then((photos) => photos.clear()),
      before.world.buyers().then((buyers) => buyers.clear()),
    ]);
    open = undefined;
    shown = undefined;
  }
  return null;
}

const needOpen = async (): Promise<Open> => {
  if (!open) throw new Error('No collection is open.');
  return open;
};

async function carryOut(message: Extract<ToDesk, { is: 'tell' }>): Promise<unknown> {
  if (message.kind === 'open') return openCommand(message.ask);
  if (message.kind === 'eraseDemo') return eraseDemo();
  const { keeper } = await needOpen();
  const { handlers } = await keeper();
  const handle = handlers[message.kind] as (ask: unknown) => Promise<unknown>;
  return handle(message.ask);
}

async function receive(message: ToDesk): Promise<void> {
  if (historyTimer !== undefined) readHistoryWhenQuiet();
  if (message.is === 'unwatch') {
    watched.delete(message.id);
    return;
  }
  try {
    if (message.is === 'watch') {
      const watch = { kind: message.kind, ask: message.ask as never };
      watched.set(message.id, watch);
      if (!shown) loadAhead(watch).catch(tryLater);
      pushView(message.id);
    } else {
      send({ is: 'answer', id: message.id, answer: await carryOut(message) });
    }
  } catch (error) {
    const [text, remedy] =
      error instanceof Fault
        ? [error.message, error.remedy]
        : [
            `Something went wrong: ${String(error)}`,
            'Close the app and open it again. What was saved is safe.',
          ];
    send({ is: 'fault', id: message.id, message: text, remedy });
  }
}

self.addEventListener('message', ({ data }: MessageEvent<ToDesk>) => void receive(data));
setInterval(() => void open?.then(({ collection }) => collection.refresh()), MINUTE_MS);
