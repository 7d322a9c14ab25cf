import type { LabelCode } from '../../domain/core/code.ts';
import { groupedCode, type LabelSubject } from '../../domain/labels/subject.ts';

export interface SubjectPickerProps {
  readonly subjects: readonly LabelSubject[];
  readonly skipped: ReadonlySet<LabelCode>;
  readonly onSkip: (skipped: ReadonlySet<LabelCode>) => void;
}

/** Which of the labels to print: all of them at first, each with a box to tick. */
export function SubjectPicker({ subjects, skipped, onSkip }: SubjectPickerProps) {
  const picked = subjects.filter(({ code }) => !skipped.has(code)).length;
  const toggle = (code: LabelCode) => {
    const next = new Set(skipped);
    if (!next.delete(code)) next.add(code);
    onSkip(next);
  };
  return (
    <details class="labels-fold">
      <summary>
        {picked === subjects.length ? `All ${picked}` : `${picked} of ${subjects.length}`} picked
      </summary>
      <div class="labels-pair">
        <button type="button" onClick={() => onSkip(new Set())}>
          Pick all
        </button>
        <button type="button" onClick={() => onSkip(new Set(subjects.map(({ code }) => code)))}>
          Pick none
        </button>
        <button
          type="button"
          onClick={() =>
            onSkip(new Set(subjects.filter(({ wasPrinted }) => wasPrinted).map(({ code }) => code)))
          }
        >
          Pick those not printed yet
        </button>
      </div>
      <ul class="labels-list">
        {subjects.map(({ code, position, title }) => (
          <li key={`${code} ${title}`}>
            <label class="labels-row">
              <input type="checkbox" checked={!skipped.has(code)} onChange={() => toggle(code)} />
              <span class="labels-row-name">
                {position === undefined ? null : <strong>{position}</strong>} {title}
              </span>
              <span class="labels-code">{groupedCode(code)}</span>
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}
