import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { SizeMm } from '../../domain/labels/format.ts';
import { PAGES } from '../../domain/labels/formats.ts';
import { Icon } from '../components/Icon.tsx';
import './print.css';
import { PrintPages } from './PrintPages.tsx';

const papers = [
  { name: 'A4', size: PAGES.a4 },
  { name: 'Letter', size: PAGES.letter },
] as const;

const onItsSide = ({ width, height }: SizeMm): SizeMm => ({ width: height, height: width });

/** Prints what a screen shows, on the paper that is picked. */
export function OnPaper({
  isWide = false,
  pagesOn,
}: {
  /** On the long side of the paper. */
  readonly isWide?: boolean;
  readonly pagesOn: (size: SizeMm) => readonly ComponentChildren[];
}) {
  // Counted, so that the same paper can be asked for again.
  const [job, setJob] = useState<{ readonly size: SizeMm; readonly count: number }>();
  const print = (size: SizeMm) =>
    setJob({ size: isWide ? onItsSide(size) : size, count: (job?.count ?? 0) + 1 });
  return (
    <>
      <section class="stack">
        <h2>On paper</h2>
        <div class="two">
          {papers.map(({ name, size }) => (
            <button type="button" key={name} class="pill" onClick={() => print(size)}>
              <Icon name="print" /> Print on {name}
            </button>
          ))}
        </div>
      </section>
      {job && <PrintPages key={job.count} size={job.size} pages={pagesOn(job.size)} />}
    </>
  );
}
