import type { Desk } from '../domain/desk.ts';
import { Fault } from '../domain/core/fault.ts';
import type { FromDesk, ToDesk } from '../worker/protocol.ts';

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (fault: Error) => void;
}

/** The desk on the other side of a worker. Commands answer in the order they were given. */
export function createDeskClient(worker: Worker): Desk {
  const waiting = new Map<number, Waiting>();
  const watching = new Map<number, (view: never) => void>();
  let lastId = 0;
  const send = (message: ToDesk): void => worker.postMessage(message);

  worker.addEventListener('message', ({ data }: MessageEvent<FromDesk>) => {
    if (data.is === 'view') {
      watching.get(data.id)?.(data.view as never);
      return;
    }
    const asker = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.is === 'answer') asker?.resolve(data.answer as never);
    else asker?.reject(new Fault('storage-failed', data.message, data.remedy));
  });

  return {
    watch(kind, ask, show) {
      const id = ++lastId;
      watching.set(id, show);
      send({ is: 'watch', id, kind, ask } as ToDesk);
      return () => {
        watching.delete(id);
        send({ is: 'unwatch', id });
      };
    },
    tell: (kind, ask) =>
      new Promise((resolve, reject) => {
        const id = ++lastId;
        waiting.set(id, { resolve, reject });
        send({ is: 'tell', id, kind, ask } as ToDesk);
      }),
  };
}
