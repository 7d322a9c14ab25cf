import { useState } from 'preact/hooks';
import type { Day } from '../../domain/core/calendar.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { Prey } from '../../domain/events/feeding.ts';
import type { PreyView } from '../../domain/views/prey-view.ts';
import { piecesWords, sizeName } from '../../domain/views/prey-words.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';

type Size = Pick<Prey, 'kind' | 'size'>;

/** What is to be written down of the freezer, and of which size where that is known. */
export interface StockWork {
  readonly kind: 'in' | 'count' | 'out';
  readonly of?: Size;
}

const titles = { in: 'Prey came in', count: 'Count the freezer', out: 'Throw out' } as const;

/** Pieces in, counted or thrown out, of one size. */
export function StockForm({
  work,
  view,
  onClose,
}: {
  readonly work: StockWork;
  readonly view: PreyView;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const known = [...view.sizes, ...view.stock.filter((line) => !view.sizes.some(isSame(line)))];
  const [name, setName] = useState(work.of ? sizeName(work.of) : '');
  const [typed, setTyped] = useState('');
  const [useBy, setUseBy] = useState('');
  const [batch, setBatch] = useState('');
  const chosen = known.find((size) => sizeName(size) === name);
  const pieces = /^\d{1,4}$/.test(typed) ? Number(typed) : undefined;
  const canWrite =
    chosen !== undefined && pieces !== undefined && (pieces > 0 || work.kind === 'count');

  const save = () => {
    if (!chosen || pieces === undefined) return;
    const { kind, size } = chosen;
    const words = piecesWords({ kind, size, pieces });
    void write({
      drafts: [draftOf(work.kind, { kind, size, pieces }, useBy, batch.trim())],
      words: {
        in: `${words} into the freezer`,
        count: `${words} counted`,
        out: `${words} thrown out`,
      }[work.kind],
      after: onClose,
    });
  };

  return (
    <Sheet title={titles[work.kind]} onClose={onClose}>
      <label>
        Size
        <select value={name} onChange={({ currentTarget }) => setName(currentTarget.value)}>
          <option value="">Choose</option>
          {known.map((size) => (
            <option key={sizeName(size)} value={sizeName(size)}>
              {sizeName(size)}
            </option>
          ))}
        </select>
      </label>
      <label>
        Pieces
        <input
          inputMode="numeric"
          autocomplete="off"
          value={typed}
          onInput={({ currentTarget }) => setTyped(currentTarget.value.trim())}
        />
      </label>
      {work.kind === 'in' && (
        <>
          <label>
            Use by, if you know it
            <input
              type="date"
              value={useBy}
              onChange={({ currentTarget }) => setUseBy(currentTarget.value)}
            />
          </label>
          <label>
            Supplier and lot, as on the bag
            <input
              maxLength={60}
              autocomplete="off"
              value={batch}
              onInput={({ currentTarget }) => setBatch(currentTarget.value)}
            />
          </label>
        </>
      )}
      <Slab icon="check" kind="main" disabled={!canWrite} onPress={save}>
        {chosen && pieces !== undefined ? `Write ${piecesWords({ ...chosen, pieces })}` : 'Write'}
      </Slab>
    </Sheet>
  );
}

const isSame =
  (a: Size) =>
  (b: Size): boolean =>
    a.kind === b.kind && a.size === b.size;

function draftOf(
  work: StockWork['kind'],
  what: Size & { readonly pieces: number },
  useBy: string,
  batch: string,
): Draft {
  switch (work) {
    case 'in':
      return {
        type: 'prey-stocked',
        ...what,
        ...(useBy === '' ? {} : { useBy: useBy as Day }),
        ...(batch === '' ? {} : { batch }),
      };
    case 'count':
      return { type: 'prey-counted', ...what };
    case 'out':
      return { type: 'prey-thrown-out', ...what, from: 'freezer', why: 'other' };
  }
}
