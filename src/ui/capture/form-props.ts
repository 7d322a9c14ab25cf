import type { Draft } from '../../domain/events/event.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';

export type FormName = 'weigh' | 'shed' | 'follicles' | 'meal' | 'pair' | 'more' | 'move';

/** What a form needs: who it is about, and how to write. Closes itself once it is written. */
export interface FormProps {
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly put: (
    draft: Draft,
    words: string,
    more?: {
      readonly after?: () => void;
      readonly instead?: (value: number) => Draft;
    },
  ) => void;
  readonly onClose: () => void;
  readonly onForm: (form: FormName) => void;
}
