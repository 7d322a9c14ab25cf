import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';

/** Writes what a big button says. */
export type Put = (draft: Draft, words: string) => void;

export interface RowProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly put: Put;
}
