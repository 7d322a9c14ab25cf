import { fileURLToPath } from 'node:url';
import { atMost, median, print, quantile, rounded, type Tell } from './figure.ts';
import { EVENTS, furnishLargeRoom } from './large-room.ts';
import { medianMs, savePicture, timeStarts, type Start } from './start-times.ts';
import { tapTimes, tonightTimes } from './taps.ts';

// The built app in a real browser, on a real disk, with 100,000 records of 300 snakes.

const RUNS = 5;

/** About three minutes. */
export async function browserFigures(tell: Tell): Promise<void> {
  const room = await furnishLargeRoom();
  const ms = (name: string, value: number, budget?: number): void =>
    tell({ name, value, unit: 'ms', ...(budget === undefined ? {} : atMost(budget, value)) });
  try {
    ms('restore: 100,000 records, until the preview', rounded(room.restoreMs.look));
    ms('restore: 100,000 records, until they are on disk', rounded(room.restoreMs.take));
    await savePicture(room, EVENTS);

    const starts = async (name: string, start: Omit<Start, 'runs'>, budget?: number) => {
      const times = await timeStarts(room, { ...start, runs: RUNS });
      ms(`start: ${name}`, medianMs(times, 'readable'), budget);
      ms(`start: ${name}, until the first pixels`, medianMs(times, 'pixels'));
      ms(`start: ${name}, until the desk's own list`, medianMs(times, 'fresh'));
    };
    const page = { whom: 'page', times: 4 } as const;
    const both = { whom: 'page and desk', times: 4 } as const;
    await starts('warm', {});
    await starts('warm, page 4 times slower', { slower: page }, 500);
    await starts('warm, page and desk 4 times slower', { slower: both }, 500);
    const bare = { forget: 'last seen' } as const;
    await starts('warm, no list remembered, page 4 times slower', { ...bare, slower: page });
    await starts('warm, no list remembered, page and desk 4 times slower', {
      ...bare,
      slower: both,
    });
    const cold = { forget: 'last seen and picture' } as const;
    await starts('from the whole log, no saved picture', cold, 1_200);

    const opened = await tonightTimes(room);
    ms('tonight: from another screen to the list', rounded(median(opened)), 300);
    const taps = await tapTimes(room);
    ms('tap: until it is written and said so, median', rounded(quantile(taps, 0.5), 1));
    const p95 = rounded(quantile(taps, 0.95), 1);
    ms('tap: until it is written and said so, p95', p95, 100);
  } finally {
    await room.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await browserFigures(print);
