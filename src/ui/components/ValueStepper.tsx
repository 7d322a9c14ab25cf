import './value-stepper.css';

/** A number between two large keys; a tap on it types another one, where it can be typed. */
export const ValueStepper = ({
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
  readonly onType?: () => void;
}) => (
  <div class="value-stepper" role="group" aria-label={name}>
    <div class="value-keys">
      <button type="button" aria-label="Less" disabled={!canLess} onClick={() => onStep(-1)}>
        −
      </button>
      {onType ? (
        <button type="button" class="value-typed number" onClick={onType}>
          <output>{words}</output>
          <small>tap to type</small>
        </button>
      ) : (
        <output class="value-typed number">{words}</output>
      )}
      <button type="button" aria-label="More" disabled={!canMore} onClick={() => onStep(1)}>
        +
      </button>
    </div>
  </div>
);
