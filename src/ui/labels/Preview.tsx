import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';

/** One page as it will be printed, and the way to the others. */
export function Preview({ pages }: { readonly pages: readonly (() => ComponentChildren)[] }) {
  const turned = useSignal(0);
  const shown = Math.min(turned.value, pages.length - 1);
  const turn = (by: number) => {
    turned.value = Math.min(pages.length - 1, Math.max(0, shown + by));
  };
  return (
    <section class="labels-preview" aria-label="Preview">
      {pages[shown]?.()}
      {pages.length > 1 && (
        <div class="labels-turn">
          <button type="button" aria-label="Page before" onClick={() => turn(-1)}>
            ‹
          </button>
          <output>
            Page {shown + 1} of {pages.length}
          </output>
          <button type="button" aria-label="Page after" onClick={() => turn(1)}>
            ›
          </button>
        </div>
      )}
    </section>
  );
}
