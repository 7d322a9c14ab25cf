import type { Day } from '../../domain/core/calendar.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { useModel } from '../model.ts';
import { onNight } from './drafts.ts';
import type { FormName, FormProps } from './form-props.ts';
import { FolliclesForm } from './FolliclesForm.tsx';
import { MealForm } from './MealForm.tsx';
import { MoreForm } from './MoreForm.tsx';
import { MoveForm } from './MoveForm.tsx';
import { PairForm } from './PairForm.tsx';
import { ShedForm } from './ShedForm.tsx';
import { WeighForm } from './WeighForm.tsx';

const forms = {
  weigh: WeighForm,
  shed: ShedForm,
  follicles: FolliclesForm,
  meal: MealForm,
  pair: PairForm,
  more: MoreForm,
  move: MoveForm,
} as const;

export function CaptureForm({
  name,
  view,
  occupant,
  night,
  onForm,
}: {
  readonly name: FormName;
  readonly view: CaptureView;
  readonly occupant: Occupant;
  readonly night: Day | undefined;
  readonly onForm: (form: FormName | undefined) => void;
}) {
  const { write } = useModel();
  const Form = forms[name];
  const close = () => onForm(undefined);
  const put: FormProps['put'] = (draft, words, { after, instead } = {}) =>
    void write({
      drafts: [onNight(draft, night)],
      tub: view.tub,
      words: `${occupant.name}: ${words}`,
      instead: instead && ((value) => [onNight(instead(value), night)]),
      after: () => {
        after?.();
        close();
      },
    });
  return <Form view={view} occupant={occupant} put={put} onClose={close} onForm={onForm} />;
}
