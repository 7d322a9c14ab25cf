import { momentOf } from '../../core/calendar.ts';
import type { Series } from '../../state/readings.ts';
import { agoWords, madeBy, showC } from '../words.ts';
import type { RoomRule } from './room-rule.ts';

/** A hot spot too hot at any time of late, until someone has read it by hand and found it well. */
export const hotSpot: RoomRule = {
  id: 'R3',
  says: 'A hot spot that was too hot even once is looked at by hand: its thermostat or probe is at fault.',
  source: 'roomAlarms',
  check(room, { protocol, nowMs, rackName }) {
    const nowMin = nowMs / 60_000;
    const spots = room.air.recent.filter(({ spot }) => spot === 'hot spot');
    for (const series of spots) {
      const hottest = hottestOf(series, nowMin - protocol.roomFreshHours * 60);
      if (!hottest || hottest.tempC <= protocol.hotSpotHighC) continue;
      const isWellSince = spots.some(
        ({ rack, sensor, readings }) =>
          rack === series.rack &&
          sensor === undefined &&
          readings.some(
            ({ minute, tempC }) => minute > hottest.minute && tempC <= protocol.hotSpotHighC,
          ),
      );
      if (isWellSince) continue;
      const where = series.rack === undefined ? 'The hot spot' : `Rack ${rackName(series.rack)}`;
      const { minute, offsetMin } = hottest;
      const at = momentOf({ ms: minute * 60_000, offsetMin }).slice(11, 16);
      return {
        asks: `${where}: hot spot ${showC(hottest.tempC)}`,
        because: [
          `${madeBy(series)}: ${showC(hottest.tempC)} at ${at}, ${agoWords(nowMin - minute)}; the limit is ${showC(protocol.hotSpotHighC)}.`,
        ],
      };
    }
    return undefined;
  },
};

const hottestOf = ({ readings }: Series, sinceMin: number) =>
  readings
    .filter(({ minute }) => minute >= sinceMin)
    .reduce<(typeof readings)[number] | undefined>(
      (hottest, each) => (hottest && hottest.tempC >= each.tempC ? hottest : each),
      undefined,
    );
