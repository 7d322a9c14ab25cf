import type { AnimalId, ClutchId, EventId, IncubatorId } from '../core/ids.ts';
import type { Result } from '../core/result.ts';
import type { NewHatchling } from '../commands/new-hatchling.ts';
import type { ClutchView } from './clutch-view.ts';
import type { FatherOffer } from './father-offers.ts';
import type { HatcheryView } from './hatchery-view.ts';
import type { IncubatorSpanAsk } from './incubator-span.ts';
import type { SpanView } from './room-span.ts';
import type { IncubatorView } from './incubator-view.ts';

// The desk's words about eggs, a part of those in `desk.ts`.

export interface HatcheryViews {
  /** Incubators, and all clutches. */
  readonly hatchery: { readonly ask: null; readonly view: HatcheryView };
  readonly clutch: { readonly ask: ClutchId; readonly view: ClutchView | undefined };
  /** Who may be the father of what a female is to lay. */
  readonly fathers: { readonly ask: AnimalId; readonly view: readonly FatherOffer[] };
  readonly incubatorSpan: {
    readonly ask: IncubatorSpanAsk;
    readonly view: SpanView | undefined;
  };
  readonly incubator: { readonly ask: IncubatorId; readonly view: IncubatorView | undefined };
}

export interface HatcheryCommands {
  /** Makes a hatchling an animal of its clutch; the ids are of its records. */
  readonly takeInHatchling: {
    readonly ask: NewHatchling;
    readonly answer: Result<{ readonly animal: AnimalId; readonly ids: readonly EventId[] }>;
  };
}
