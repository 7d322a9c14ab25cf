import { instantMs, type Day, type Moment } from '../../../src/domain/core/calendar.ts';
import { defaultProtocol, type Protocol } from '../../../src/domain/protocol/values.ts';
import type { Programme } from '../../../src/domain/state/room-air.ts';
import type { Reading } from '../../../src/domain/state/readings.ts';
import { moment } from '../../make.ts';

export const protocol: Protocol = defaultProtocol;

/** Minutes since 1970 UTC. */
export const minuteOf = (at: string): number => instantMs(moment(at)) / 60_000;

export const aProgramme = (parts: Partial<Programme> = {}): Programme => ({
  from: '2020-01-01' as Day,
  name: 'Test',
  dayFromMin: 480,
  nightFromMin: 1_200,
  steps: [{ month: 1, day: 1, dayC: 26, nightC: 21, hotSpotC: 32 }],
  ...parts,
});

/** Readings from a moment on, each so many minutes after the one before. */
export const readingsFrom = (
  at: string,
  everyMin: number,
  temps: readonly number[],
  offsetMin = 60,
): Reading[] =>
  temps.map((tempC, i) => ({ minute: minuteOf(at) + i * everyMin, offsetMin, tempC }));

export const asMoment = (text: string): Moment => moment(text);
