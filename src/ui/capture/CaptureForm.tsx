import type { Day } from '../../domain/core/calendar.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { useModel } from '../model.ts';
import { onNight } from './drafts.ts';
import type { FormName, FormProps } from './form-props.ts';
import { EggsForm } from './EggsForm.tsx';
import { FolliclesForm } from './FolliclesForm.tsx';
import { MealForm } from './MealForm.tsx';
import { MoreForm } from './MoreForm.tsx';
import { MoveForm } from './MoveForm.tsx';
import { OvulationForm } from './OvulationForm.tsx';
import { PairForm } from './PairForm.tsx';
import { PictureForm } from './PictureForm.tsx';
import { ShedForm } from './ShedForm.tsx';
import { WeighForm } from './WeighForm.tsx';
import './forms.css';
import { GeneTestAtTub, YoungAtTub } from './gene-forms.tsx';

const forms = {
  weigh: WeighForm,
  shed: ShedForm,
  follicles: FolliclesForm,
  meal: MealForm,
  pair: PairForm,
  ovulation: OvulationForm,
  eggs: EggsForm,
  picture: PictureForm,
  'gene-test': GeneTestAtTub,
  young: YoungAtTub,
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
  const put: FormProps['put'] = (draft, words, { also = [], after, instead } = {}) => {
    const dated = (first: typeof draft) => [first, ...also].map((each) => onNight(each, night));
    void write({
      drafts: dated(draft),
      tub: view.tub,
      words: `${occupant.name}: ${words}`,
      instead: instead && ((value, across) => dated(instead(value, across))),
      after: () => {
        after?.();
        close();
      },
    });
  };
  return (
    <Form view={view} occupant={occupant} night={night} put={put} onClose={close} onForm={onForm} />
  );
}
