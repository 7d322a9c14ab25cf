import type { Day } from '../../domain/core/calendar.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';

export type FormName =
  | 'weigh'
  | 'shed'
  | 'follicles'
  | 'meal'
  | 'pair'
  | 'ovulation'
  | 'eggs'
  | 'picture'
  | 'gene-test'
  | 'young'
  | 'more'
  | 'move';

/** What a form needs: who it is about, and how to write. Closes itself once it is written. */
export interface FormProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  /** The earlier night it is written to. */
  readonly night: Day | undefined;
  readonly put: (
    draft: Draft,
    words: string,
    more?: {
      /** Written in the same go, such as a picture of it. */
      readonly also?: readonly Draft[];
      readonly after?: () => void;
      readonly instead?: (value: number, across?: number) => Draft;
    },
  ) => void;
  readonly onClose: () => void;
  readonly onForm: (form: FormName) => void;
}
