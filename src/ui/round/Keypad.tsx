import { useState } from 'preact/hooks';
import { readTypedCode, type LabelCode } from '../../domain/core/code.ts';
import { SYMBOLS, type TubId } from '../../domain/core/ids.ts';
import { Sheet } from '../components/Sheet.tsx';
import { useView } from '../model.ts';

const KEYS = Array.from(SYMBOLS);

const plain = (position: string): string => position.replaceAll('-', '');

/** A way on without a camera: a position like B4-2, or the seven signs under the code. */
export function Keypad({
  onTub,
  onCode,
  onClose,
}: {
  readonly onTub: (tub: TubId) => void;
  readonly onCode: (code: LabelCode) => void;
  readonly onClose: () => void;
}) {
  const [typed, setTyped] = useState('');
  const labels = useView('labels', null);
  const tubs = (labels?.labelled ?? []).filter(({ kind }) => kind === 'tub');
  const match = tubs.find(({ position = '' }) => plain(position) === plain(typed));
  const code = typed.length === 7 ? readTypedCode(typed) : undefined;
  const problem = code && !code.ok ? code.problem.message : undefined;
  const open = () => {
    if (match?.tub) onTub(match.tub);
    else if (code?.ok) onCode(code.value);
  };
  return (
    <Sheet title="Position or code" onClose={onClose}>
      <div class="pad-shown">
        <output aria-label="Typed">{typed}</output>
        <span class="quiet">{match ? 'a tub' : code?.ok ? 'a code' : 'B42 or 7KQ2M9X'}</span>
      </div>
      {problem !== undefined && <p role="alert">{problem}</p>}
      <div class="letter-keys">
        {KEYS.map((key) => (
          <button
            type="button"
            key={key}
            onClick={() => setTyped((before) => (before.length < 7 ? before + key : before))}
          >
            {key}
          </button>
        ))}
        <button type="button" onClick={() => setTyped((before) => `${before}-`)}>
          -
        </button>
        <button
          type="button"
          aria-label="Delete"
          onClick={() => setTyped((before) => before.slice(0, -1))}
        >
          ⌫
        </button>
      </div>
      <button type="button" class="slab slab-main" disabled={!match && !code?.ok} onClick={open}>
        Open {match?.position ?? typed}
      </button>
    </Sheet>
  );
}
