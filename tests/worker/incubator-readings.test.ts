import { expect, test } from 'vitest';
import { incubatorSpan } from '../../src/domain/views/incubator-span.ts';
import { hatcheryView } from '../../src/domain/views/hatchery-view.ts';
import { incubatorId } from '../make-ids.ts';
import { textFile } from '../store/text-file.ts';
import { aDevice, openTab, type Tab } from './make-world.ts';

const incubator = incubatorId(1);
const END = Date.parse('2026-11-24T20:00:00Z');

/** A reading every ten minutes of the last `days`, in UTC. */
const file = (days: number, tempAt: (n: number) => number) =>
  textFile(
    [
      'time,temp °C,humidity',
      ...Array.from({ length: days * 144 }, (_, n) => {
        const at = new Date(END - (days * 144 - 1 - n) * 600_000).toISOString();
        return `${at},${tempAt(n).toFixed(1)},92`;
      }),
    ].join('\n'),
  );

async function withIncubator(): Promise<Tab> {
  const tab = await openTab(aDevice());
  const made = await tab.record({
    drafts: [{ type: 'incubator-made', incubator, name: 'Left', targetC: 31.5 }],
  });
  expect(made.kind).toBe('done');
  return tab;
}

test('a sensor’s file goes into an incubator; eggs and air stay apart, and twice adds nothing', async () => {
  const tab = await withIncubator();
  // Every sixth hour 29 °C, else 31: of six hours one is out, less what the two slopes of ten minutes keep in.
  const eggs = file(2, (n) => (Math.floor(n / 6) % 6 === 5 ? 29 : 31));
  const look = (spot: 'egg level' | 'air', csv: ReturnType<typeof file>) =>
    tab.lookIntoReadings({ incubator, spot, sensor: 'probe', file: csv });
  expect(await look('egg level', eggs)).toMatchObject({ value: { fresh: 288, known: 0, gaps: 0 } });
  expect(await tab.takeInReadings(null)).toMatchObject({ value: { readings: 288 } });
  expect(await look('egg level', eggs)).toMatchObject({ value: { fresh: 0, known: 288 } });
  expect(
    await look(
      'air',
      file(2, () => 32),
    ),
  ).toMatchObject({ value: { fresh: 288, known: 0 } });
  await tab.takeInReadings(null);

  const logged = (await tab.onDisk()).filter(
    (each) => (each as { type: string }).type === 'incubator-logged',
  );
  expect(logged).toMatchObject([
    { incubator, spot: 'egg level', sensor: 'probe' },
    { incubator, spot: 'air', sensor: 'probe' },
  ]);
  const span = incubatorSpan(`${incubator}/7/0`, tab.picture);
  expect(span?.series.map(({ label }) => label)).toEqual([
    'Between the eggs · probe',
    'Air · probe',
  ]);
  const [between, air] = span!.series;
  // Eight dips of 50 minutes at 29 °C, each with half of the ten minutes before and, but for the last, after.
  expect(between?.statistics).toMatchObject({ belowMin: 8 * 50 + 8 * 5 + 7 * 5, aboveMin: 0 });
  expect(air?.statistics.inBandMin).toBe(air?.statistics.judgedMin);
  // The first three hours lie on the day before by local time, and before the first dip.
  expect(between?.lines.map(({ dayMinC, dayMaxC }) => [dayMinC, dayMaxC])).toEqual([
    [31, 31],
    [29, 31],
    [29, 31],
  ]);
  // The limits of eggs inside, those of an alarm outside: common practice, no source.
  expect(between?.bands.map(({ lowC, highC }) => [lowC, highC])).toEqual([
    [27, 33.5],
    [30, 32.8],
  ]);
  expect(hatcheryView(tab.picture).incubators[0]?.tempC).toBe(29);
});
