import type { LabelFormat, Paper } from '../../domain/labels/format.ts';
import { formatsOn } from '../../domain/labels/formats.ts';
import { Choice } from './Choice.tsx';

const PAPERS: readonly { readonly value: Paper; readonly label: string }[] = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'US Letter' },
  { value: 'roll', label: 'Roll' },
];

export interface PaperChoiceProps {
  readonly format: LabelFormat;
  readonly onChoose: (formatId: string) => void;
}

/** The paper and the size of its labels, with what to look at before printing on it. */
export function PaperChoice({ format, onChoose }: PaperChoiceProps) {
  const choosePaper = (paper: Paper) => {
    const [first] = formatsOn(paper);
    if (first && paper !== format.paper) onChoose(first.id);
  };
  return (
    <>
      <Choice
        legend="Paper"
        name="labels-paper"
        options={PAPERS}
        chosen={format.paper}
        onChoose={choosePaper}
      />
      <label class="labels-field">
        Label size, width × height
        <select value={format.id} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
          {formatsOn(format.paper).map(({ id, name }) => (
            <option key={id} value={id} selected={id === format.id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p class="labels-hint">
        {format.paper === 'roll'
          ? 'Measure your labels before you print a whole roll.'
          : 'Measure your labels first: makers differ by a millimetre or two.'}
      </p>
    </>
  );
}
