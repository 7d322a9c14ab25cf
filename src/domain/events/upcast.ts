export type RawEvent = Readonly<Record<string, unknown>>;

/** One step per retired shape, keyed `type@version`. A step that has been released never changes. */
export type Steps = Readonly<Record<string, (raw: RawEvent) => RawEvent>>;

/** None yet: every shape is in its first version. */
const released: Steps = {};

/** A record of any earlier shape in today's shape. */
export function upcast(raw: RawEvent, steps: Steps = released): RawEvent {
  const step = steps[`${String(raw['type'])}@${String(raw['v'])}`];
  return step ? upcast(step(raw), steps) : raw;
}
