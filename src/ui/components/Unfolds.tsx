import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** What is read on demand is drawn on demand: a long list of reasons must not delay the list. */
export function Unfolds({
  summary,
  kind,
  children,
}: {
  readonly summary: ComponentChildren;
  readonly kind?: string | undefined;
  readonly children: () => ComponentChildren;
}) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details
      class={kind}
      // It may have been opened while it stood in the page and there was no program yet.
      ref={(details) => {
        if (details?.open === true) setIsOpen(true);
      }}
      onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}
    >
      <summary>{summary}</summary>
      {isOpen && children()}
    </details>
  );
}
