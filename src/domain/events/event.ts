import * as z from 'zod/mini';
import { bodyEvents } from './body.ts';
import { breedingEvents } from './breeding.ts';
import { clutchEvents } from './clutch.ts';
import { correctionEvents } from './correction.ts';
import { feedingEvents } from './feeding.ts';
import { genesEvents } from './genes.ts';
import { householdEvents } from './household.ts';
import { incubatorEvents } from './incubator.ts';
import { lifeEvents } from './life.ts';
import { photoEvents } from './photos.ts';
import { placeEvents } from './places.ts';
import { preyEvents } from './prey.ts';
import { roomEvents } from './room.ts';
import { rotationEvents } from './rotation.ts';
import { saleEvents } from './sales.ts';

/**
 * Everything that can be recorded. This schema is the single definition: types, the import check
 * and the backup format all come from it. A shape that has been released is never edited: give the
 * event a new `v`, and a step in `upcast.ts`.
 */
export const RackEvent = z.discriminatedUnion('type', [
  ...placeEvents,
  ...roomEvents,
  ...lifeEvents,
  ...feedingEvents,
  ...preyEvents,
  ...bodyEvents,
  ...breedingEvents,
  ...clutchEvents,
  ...incubatorEvents,
  ...rotationEvents,
  ...genesEvents,
  ...photoEvents,
  ...saleEvents,
  ...householdEvents,
  ...correctionEvents,
]);
export type RackEvent = z.infer<typeof RackEvent>;

export type EventType = RackEvent['type'];

export type EventOf<Type extends EventType> = Extract<RackEvent, { type: Type }>;

/** An event before it is stamped with id, time of writing and device. `at` is now if left out. */
export type Draft = RackEvent extends infer Each
  ? Each extends RackEvent
    ? Omit<Each, Stamped | Minted<Each>> &
        Partial<Pick<Each, 'at' | 'precision' | (Minted<Each> & keyof Each)>>
    : never
  : never;

/** What the desk adds to a draft. */
type Stamped = 'id' | 'at' | 'precision' | 'loggedAt' | 'device' | 'v';

/** What is made by being recorded gets its id there too, and so do the fathers stated with the eggs. */
type Minted<Each extends RackEvent> = Each['type'] extends 'laid' | 'paternity-stated'
  ? 'clutch'
  : Each['type'] extends 'incubator-made'
    ? 'incubator'
    : never;
