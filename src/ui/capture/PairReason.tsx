import { useEffect, useState } from 'preact/hooks';
import type { MateWarning } from '../../domain/views/pair-warnings-view.ts';
import { CautionList } from '../choosing/CautionList.tsx';
import '../choosing/choosing.css';
import { ReasonField } from '../choosing/ReasonField.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';

/** What weighs against two, and why they are put together all the same. */
export function PairReason({
  names,
  isKnown,
  warning,
  onWrite,
  onClose,
}: {
  readonly names: string;
  /** Whether what weighs against them has been worked out. */
  readonly isKnown: boolean;
  readonly warning: MateWarning | undefined;
  readonly onWrite: (reason?: string) => void;
  readonly onClose: () => void;
}) {
  const [reason, setReason] = useState('');
  const isClear = isKnown && !warning;
  useEffect(() => {
    if (isClear) onWrite();
  }, [isClear]);
  const given = reason.trim();
  return (
    <Sheet title={names} onClose={onClose}>
      {!isKnown && <p aria-busy="true">Looking for what weighs against it…</p>}
      {warning && (
        <>
          <CautionList cautions={warning.cautions} />
          {warning.reasoned !== undefined && (
            <p class="small">Your reason before: {warning.reasoned}</p>
          )}
          <ReasonField reason={reason} onReason={setReason} />
        </>
      )}
      <Slab
        icon="pair"
        kind={given === '' ? undefined : 'main'}
        under={given === '' ? 'without a reason' : given}
        onPress={() => onWrite(given === '' ? undefined : given)}
      >
        Put together
      </Slab>
    </Sheet>
  );
}
