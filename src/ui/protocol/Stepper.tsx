/** A number between two large keys; a tap on it types another one. */
export const Stepper = ({
  words,
  name,
  canLess,
  canMore,
  onStep,
  onType,
}: {
  readonly words: string;
  readonly name: string;
  readonly canLess: boolean;
  readonly canMore: boolean;
  readonly onStep: (steps: number) => void;
  readonly onType: () => void;
}) => (
  <div class="stepper" role="group" aria-label={name}>
    <div class="stepper-keys">
      <button type="button" aria-label="Less" disabled={!canLess} onClick={() => onStep(-1)}>
        −
      </button>
      <button type="button" class="stepper-value number" onClick={onType}>
        <output>{words}</output>
        <small>tap to type</small>
      </button>
      <button type="button" aria-label="More" disabled={!canMore} onClick={() => onStep(1)}>
        +
      </button>
    </div>
  </div>
);
