import { eveningOf, type Day } from '../../domain/core/calendar.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView } from '../../domain/views/capture-view.ts';
import { offsetMinOn } from '../night.ts';

/** A draft dated to an earlier night; as it is when it happened just now. */
export const onNight = (draft: Draft, night: Day | undefined): Draft =>
  night === undefined
    ? draft
    : {
        ...draft,
        at: eveningOf(night, offsetMinOn(night)),
        precision: draft.notBefore === undefined ? 'day' : 'between',
      };

export const takenOut = ({ male, female }: NonNullable<CaptureView['pair']>): Draft => ({
  type: 'taken-out',
  male,
  female,
});
