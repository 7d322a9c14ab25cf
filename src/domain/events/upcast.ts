export type RawEvent = Readonly<Record<string, unknown>>;

/** One step per retired shape, keyed `type@version`. A step that has been released never changes. */
export type Steps = Readonly<Record<string, (raw: RawEvent) => RawEvent>>;

const released: Steps = {
  // Version 2 may name a room as well.
  'label-assigned@1': (raw) => ({ ...raw, v: 2 }),
  // Version 3 may name a clutch’s egg box or an incubator as well.
  'label-assigned@2': (raw) => ({ ...raw, v: 3 }),
};

/** A record of any earlier shape in today's shape. */
export function upcast(raw: RawEvent, steps: Steps = released): RawEvent {
  const step = steps[`${String(raw['type'])}@${String(raw['v'])}`];
  return step ? upcast(step(raw), steps) : raw;
}
