interface StepperProps {
  readonly label: string;
  /** Undefined: not counted, which is not zero. */
  readonly count: number | undefined;
  readonly most: number;
  readonly onStep: (step: 1 | -1) => void;
}

/** The count after a step: below zero lies “not counted”. */
export function stepped(count: number | undefined, step: 1 | -1, most: number): number | undefined {
  if (count === undefined) return step > 0 ? 1 : 0;
  const next = count + step;
  return next < 0 ? undefined : Math.min(next, most);
}

/** A count by thumb. */
export const Stepper = ({ label, count, most, onStep }: StepperProps) => (
  <div class="stepper" role="group" aria-label={label}>
    <span>{label}</span>
    <button type="button" aria-label={`${label}: one less`} onClick={() => onStep(-1)}>
      −
    </button>
    <output aria-label={label}>{count ?? '–'}</output>
    <button
      type="button"
      aria-label={`${label}: one more`}
      disabled={count === most}
      onClick={() => onStep(1)}
    >
      +
    </button>
  </div>
);
