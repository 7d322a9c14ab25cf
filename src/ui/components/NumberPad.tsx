import { useLayoutEffect, useRef } from 'preact/hooks';

interface PadProps {
  readonly label: string;
  readonly unit: string;
  /** What is typed so far, kept by the caller so that it survives a reload. */
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly doneLabel: string;
  readonly onDone: () => void;
  readonly decimals?: boolean;
  readonly before?: string | undefined;
  /** Where more than the number shown decides. */
  readonly canBeDone?: boolean | undefined;
}

const MOST_DIGITS = 6;

/** The number after one key. */
export function typeKey(typed: string, key: string): string {
  if (key === '⌫') return typed.slice(0, -1);
  if (key === '.') return typed.includes('.') || typed === '' ? typed : `${typed}.`;
  return typed.length >= MOST_DIGITS ? typed : `${typed === '0' ? '' : typed}${key}`;
}

/** Large keys of our own: the system keyboard covers half the screen and jumps. */
export function NumberPad({
  label,
  unit,
  typed,
  onType,
  doneLabel,
  onDone,
  decimals = false,
  before,
  canBeDone = typed !== '',
}: PadProps) {
  const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9', decimals ? '.' : '', '0', '⌫'];
  // Two quick taps can come before the next drawing: each must build on the one before.
  const latest = useRef(typed);
  latest.current = typed;
  const press = (key: string) => {
    latest.current = typeKey(latest.current, key);
    onType(latest.current);
  };
  // A real keyboard types too, as on a laptop beside the scale; from the first moment on.
  useLayoutEffect(() => {
    const typeByKeyboard = (event: KeyboardEvent) => {
      if (/^[0-9]$/.test(event.key) || (decimals && event.key === '.')) press(event.key);
      else if (event.key === 'Backspace') press('⌫');
    };
    addEventListener('keydown', typeByKeyboard);
    return () => removeEventListener('keydown', typeByKeyboard);
  });
  return (
    <div class="stack">
      <div class="pad-shown">
        <output aria-label={label}>{typed}</output>
        <span class="quiet">
          {before === undefined ? '' : `${before} · `}
          {unit}
        </span>
      </div>
      <div class="pad-keys">
        {keys.map((key) =>
          key === '' ? (
            <span key="blank" />
          ) : (
            <button
              type="button"
              key={key}
              aria-label={key === '⌫' ? 'Delete' : key === '.' ? 'Point' : key}
              onClick={() => press(key)}
            >
              {key}
            </button>
          ),
        )}
      </div>
      <button type="button" class="slab slab-main" disabled={!canBeDone} onClick={onDone}>
        {doneLabel}
      </button>
    </div>
  );
}
