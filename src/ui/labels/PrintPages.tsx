import { useLayoutEffect } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import type { SizeMm } from '../../domain/labels/format.ts';
import { setPageSize } from './page-size.ts';

/**
 * Pages on their way to the printer: opens the browser's print window as soon as they stand.
 *
 * They stay after that until the keeper goes on, because some phones draw the pages only when the
 * window is already open.
 */
export function PrintPages({
  size,
  pages,
}: {
  readonly size: SizeMm;
  readonly pages: readonly ComponentChildren[];
}) {
  useLayoutEffect(() => {
    const restore = setPageSize(size);
    window.print();
    return restore;
  }, []);
  return (
    <div class="print-pages">
      {pages.map((page, i) => (
        <div key={i} class="print-page">
          {page}
        </div>
      ))}
    </div>
  );
}
