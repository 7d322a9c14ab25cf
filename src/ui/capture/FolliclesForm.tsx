import { useState } from 'preact/hooks';
import type { EventOf } from '../../domain/events/event.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft } from '../model.ts';
import type { FormProps } from './form-props.ts';

type Found = EventOf<'follicles-scanned'>['found'];

/** How it feels under the fingers, with the follicle size that goes with it. */
const felts = [
  { felt: 'nothing', under: 'none felt' },
  { felt: 'small bumps', under: 'about 12 mm' },
  { felt: 'round lumps', under: 'about 20 mm' },
  { felt: 'large lumps', under: 'about 30 mm' },
  { felt: 'egg-like', under: '40 mm and more' },
] as const;

/** Two axes of the largest follicle from the frozen picture, or a felt class. */
export function FolliclesForm({ occupant, put, onClose }: FormProps) {
  const [first, setFirst] = useDraft(`scan.a.${occupant.id}`);
  const [second, setSecond] = useDraft(`scan.b.${occupant.id}`);
  const [isSecond, setIsSecond] = useState(false);
  const [isFelt, setIsFelt] = useState(false);
  const write = (found: Found, words: string) =>
    put({ type: 'follicles-scanned', animal: occupant.id, found }, words, {
      after: () => {
        setFirst('');
        setSecond('');
      },
      instead: (mm) => ({
        type: 'follicles-scanned',
        animal: occupant.id,
        found: { method: 'ultrasound', largestMm: [mm, mm] },
      }),
    });
  const writeAxes = () =>
    write(
      { method: 'ultrasound', largestMm: [Number(first), Number(second)] },
      `largest follicle ${first} × ${second} mm`,
    );

  return (
    <Sheet title={`Follicles of ${occupant.name}`} onClose={onClose}>
      <div class="two" role="group" aria-label="How">
        <Slab pressed={!isFelt} onPress={() => setIsFelt(false)}>
          Ultrasound
        </Slab>
        <Slab pressed={isFelt} onPress={() => setIsFelt(true)}>
          Felt
        </Slab>
      </div>
      {isFelt ? (
        <div class="two">
          {felts.map(({ felt, under }) => (
            <Slab
              key={felt}
              under={under}
              onPress={() => write({ method: 'palpation', felt }, `felt: ${felt}`)}
            >
              {felt}
            </Slab>
          ))}
        </div>
      ) : (
        <>
          <NumberPad
            label={isSecond ? 'Second axis, across' : 'First axis of the largest'}
            unit="mm"
            decimals
            before={isSecond ? `${first} ×` : 'first axis'}
            typed={isSecond ? second : first}
            onType={isSecond ? setSecond : setFirst}
            doneLabel={isSecond ? `Write ${first} × ${second || '…'} mm` : 'Next: second axis'}
            onDone={isSecond ? writeAxes : () => setIsSecond(true)}
          />
          <Slab onPress={() => write({ method: 'ultrasound' }, 'scan: none seen')}>None seen</Slab>
        </>
      )}
      <p class="small quiet">
        A light hand. Scanning and feeling want training; when unsure, a vet.
      </p>
    </Sheet>
  );
}
