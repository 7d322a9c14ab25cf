import type { Moment } from '../core/calendar.ts';
import type { EventId, IncubatorId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Copy } from './copy.ts';
import type { Measured, Series } from './readings.ts';
import { withReadings } from './recent-series.ts';

export type IncubatorSpot = EventOf<'incubator-read'>['spot'];

/** A time without heat; without an end it goes on. */
export interface HeatFailure {
  readonly id: EventId;
  readonly from: Moment;
  readonly until?: Moment | undefined;
  readonly lowestC?: number | undefined;
  readonly remark?: string | undefined;
}

/** What the records say of one incubator. Of its readings only the last, as of a room. */
export interface Incubator {
  readonly kind: 'incubator';
  readonly id: IncubatorId;
  readonly name: string;
  readonly targetC?: number | undefined;
  readonly retired: boolean;
  readonly recent: readonly Series<IncubatorSpot>[];
  /** Oldest first. */
  readonly failures: readonly HeatFailure[];
}

const NEW = { kind: 'incubator', name: '', retired: false, recent: [], failures: [] } as const;

/** The incubator after the events. Total, like all reducers. */
export function applyToIncubator(
  before: Incubator | undefined,
  events: readonly RackEvent[],
  id: IncubatorId,
): Incubator {
  const incubator: Copy<Incubator> = { id, ...NEW, ...before };
  for (const event of events) change(incubator, event);
  return incubator;
}

function change(incubator: Copy<Incubator>, event: RackEvent): void {
  switch (event.type) {
    case 'incubator-made':
      incubator.name = event.name;
      incubator.targetC = event.targetC;
      incubator.retired = false;
      break;
    case 'incubator-retired':
      incubator.retired = true;
      break;
    case 'incubator-read':
    case 'incubator-logged':
      incubator.recent = withReadings(incubator.recent, measuredIn(event), event);
      break;
    case 'heat-failed': {
      const { id, at: from, until, lowestC, remark } = event;
      incubator.failures = [...incubator.failures, { id, from, until, lowestC, remark }];
      break;
    }
    case 'heat-back':
      incubator.failures = incubator.failures.map((failure) =>
        failure.until === undefined
          ? { ...failure, until: event.at, lowestC: lowest(failure.lowestC, event.lowestC) }
          : failure,
      );
      break;
    default: // Says nothing of an incubator.
  }
}

const lowest = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);

/** What a record of an incubator's temperature measured, and with what. */
export const measuredIn = (
  event: EventOf<'incubator-read' | 'incubator-logged'>,
): Measured<IncubatorSpot> => ({
  spot: event.spot,
  sensor: event.type === 'incubator-logged' ? event.sensor : undefined,
});
