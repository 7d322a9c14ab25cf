import { tenth } from '../../domain/core/tenth.ts';
import { useState } from 'preact/hooks';
import type { Draft } from '../../domain/events/event.ts';
import { NumberPad } from '../components/NumberPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft } from '../model.ts';
import { remember, remembered } from '../remember.ts';
import { FeltScale } from './FeltScale.tsx';
import type { FormProps } from './form-props.ts';
import { PhotoPick } from './PhotoPick.tsx';
import { Stepper, stepped } from './Stepper.tsx';
import { useFields } from './use-fields.ts';
import { usePhotoDraft } from './use-photo-draft.ts';

type Scanned = Extract<Draft, { type: 'follicles-scanned' }>;

const MOST = 20;
const sides = [
  ['left', 'Left'],
  ['right', 'Right'],
] as const;

/** Two axes of the largest follicle from the frozen picture, or a felt class. */
export function FolliclesForm({ occupant, put, onClose }: FormProps) {
  const { id: animal, name } = occupant;
  const [first, setFirst] = useDraft(`scan.a.${animal}`);
  const [second, setSecond] = useDraft(`scan.b.${animal}`);
  const [counts, setCount, forgetCounts] = useFields(`scan.counts.${animal}`);
  const picture = usePhotoDraft(`scan.${animal}`, animal);
  const [part, setPart] = useState<'first' | 'second' | 'counts' | 'felt'>(
    remembered('scan-how') === 'felt' && first === '' ? 'felt' : 'first',
  );

  const count = (side: 'left' | 'right') =>
    counts[side] === undefined ? undefined : Number(counts[side]);
  const counted = Object.fromEntries(
    sides.flatMap(([side]) => (count(side) === undefined ? [] : [[side, count(side)]])),
  );
  const draftOf = (found: Scanned['found']): Scanned => ({
    type: 'follicles-scanned',
    animal,
    found,
  });
  const measured = (mm: number, across: number) =>
    draftOf({ method: 'ultrasound', largestMm: [mm, across], ...counted });
  const write = (draft: Scanned, words: string) => {
    remember('scan-how', draft.found.method === 'palpation' ? 'felt' : undefined);
    put(draft, words, {
      also: picture.drafts,
      after: () => {
        setFirst('');
        setSecond('');
        forgetCounts();
        picture.forget();
      },
      instead: (mm, across = mm) => measured(mm, across),
    });
  };
  const [mm, across] = [toTenth(first), toTenth(second)];
  const writeAxes = () => write(measured(mm, across), `largest follicle ${mm} × ${across} mm`);
  const isWhole = first !== '' && second !== '';
  const writeWords = isWhole ? `Write ${mm} × ${across} mm` : `Write ${first || '…'} × … mm`;

  return (
    <Sheet title={`Follicles of ${name}`} onClose={onClose}>
      <div class="chips" role="group" aria-label="What was found">
        {(
          [
            ['first', '1st axis'],
            ['second', '2nd axis'],
            ['counts', 'Counts'],
            ['felt', 'Felt'],
          ] as const
        ).map(([to, words]) => (
          <button
            type="button"
            class="pill pill-small"
            key={to}
            aria-pressed={part === to}
            onClick={() => setPart(to)}
          >
            {words}
          </button>
        ))}
      </div>
      {part === 'felt' && (
        <FeltScale
          onPick={(felt) => write(draftOf({ method: 'palpation', felt }), `felt: ${felt}`)}
        />
      )}
      {part === 'counts' && (
        <div class="stack">
          {sides.map(([side, words]) => (
            <Stepper
              key={side}
              label={words}
              count={count(side)}
              most={MOST}
              onStep={(step) =>
                setCount(side, (before) =>
                  stepped(
                    before === undefined ? undefined : Number(before),
                    step,
                    MOST,
                  )?.toString(),
                )
              }
            />
          ))}
          <Slab kind="main" disabled={!isWhole} onPress={writeAxes}>
            {writeWords}
          </Slab>
        </div>
      )}
      {part === 'first' && (
        <NumberPad
          label="First axis of the largest"
          unit="mm"
          decimals
          before="first axis"
          typed={first}
          onType={setFirst}
          doneLabel="Next: second axis"
          onDone={() => setPart('second')}
        />
      )}
      {part === 'second' && (
        <NumberPad
          label="Second axis, across"
          unit="mm"
          decimals
          before={`${first || '…'} ×`}
          typed={second}
          onType={setSecond}
          doneLabel={writeWords}
          onDone={first === '' ? () => setPart('first') : writeAxes}
        />
      )}
      <div class="chips">
        {part !== 'felt' && (
          <button
            type="button"
            class="pill"
            onClick={() => write(draftOf({ method: 'ultrasound' }), 'scan: none seen')}
          >
            None seen
          </button>
        )}
        <PhotoPick picture={picture} />
      </div>
      <p class="small quiet">
        A light hand. Scanning and feeling want training; when unsure, a vet.
      </p>
    </Sheet>
  );
}

/** A tenth of a millimetre is all that a frozen picture gives. */
const toTenth = (typed: string): number => tenth(Number(typed));
