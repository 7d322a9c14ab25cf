import { celsiusOf, fahrenheitOf } from '../core/units.ts';
import type { EventOf } from '../events/event.ts';
import { noObjection, type Verdict } from './doubt.ts';

/** What air and hot spots of a snake room can be, with room for faults. Unit: °C. */
const [COLDEST_C, WARMEST_C] = [5, 45];

const isLikely = (tempC: number): boolean => tempC >= COLDEST_C && tempC <= WARMEST_C;

/**
 * A temperature typed in the other unit: 79 as °C, or 26 as °F. The other reading is offered where
 * it is a likely one; what is likely in neither is only asked about.
 */
export function assessRoomReading({
  tempC,
  entered,
}: Pick<EventOf<'room-read'>, 'tempC' | 'entered'>): Verdict {
  if (isLikely(tempC)) return noObjection;
  const said = entered
    ? `${entered.temp} °F is ${tempC.toFixed(1)} °C`
    : `${tempC} °C is ${fahrenheitOf(tempC).toFixed(1)} °F`;
  const otherC = entered ? entered.temp : celsiusOf(tempC);
  const other = entered ? `${entered.temp} °C` : `${tempC} °F, which is ${otherC.toFixed(1)} °C`;
  const doubt = { code: 'room-temperature', message: `${said}: no snake room is like that.` };
  return isLikely(otherC)
    ? {
        refusals: [],
        doubts: [{ ...doubt, instead: { label: other, value: otherC } }],
        notes: [],
      }
    : { refusals: [], doubts: [doubt], notes: [] };
}
