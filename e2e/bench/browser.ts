import { fileURLToPath } from 'node:url';
import { atMost, print, quantile, rounded, type Tell } from './figure.ts';
import { EVENTS, furnishLargeRoom } from './large-room.ts';
import { medianMs, savePicture, timeStarts } from './start-times.ts';
import { tapTimes, tonightTimes } from './taps.ts';

// The built app in a real browser, on a real disk, with 100,000 records of 300 snakes.

const RUNS = 5;

/** About two minutes. */
export async function browserFigures(tell: Tell): Promise<void> {
  const room = await furnishLargeRoom();
  const ms = (name: string, value: number, budget?: number): void =>
    tell({ name, value, unit: 'ms', ...(budget === undefined ? {} : atMost(budget, value)) });
  try {
    ms('restore: 100,000 records, until the preview', rounded(room.restoreMs.look));
    ms('restore: 100,000 records, until they are on disk', rounded(room.restoreMs.take));
    await savePicture(room, EVENTS);

    const warm = await timeStarts(room, { runs: RUNS });
    ms('start: from the saved picture', medianMs(warm));
    const slowPage = await timeStarts(room, { runs: RUNS, slower: { whom: 'page', times: 4 } });
    ms('start: from the saved picture, page 4 times slower', medianMs(slowPage), 500);
    const slower = { whom: 'page and desk', times: 4 } as const;
    const slowBoth = await timeStarts(room, { runs: RUNS, slower });
    ms('start: from the saved picture, page and desk 4 times slower', medianMs(slowBoth), 500);
    const cold = await timeStarts(room, { runs: RUNS, withoutPicture: true });
    ms('start: from the whole log, no saved picture', medianMs(cold), 1_200);

    const opened = await tonightTimes(room);
    ms('tonight: from another screen to the list', medianMs(opened), 300);
    const taps = await tapTimes(room);
    ms('tap: until it is written and said so, median', rounded(quantile(taps, 0.5), 1));
    const p95 = rounded(quantile(taps, 0.95), 1);
    ms('tap: until it is written and said so, p95', p95, 100);
  } finally {
    await room.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await browserFigures(print);
