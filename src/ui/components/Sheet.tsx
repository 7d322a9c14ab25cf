import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Icon } from './Icon.tsx';

/** A panel from below, within the thumb's reach. Escape and the close button put it away. */
export function Sheet({
  title,
  onClose,
  children,
}: {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}) {
  const panel = useRef<HTMLDialogElement>(null);
  // Modal: the browser keeps the focus inside, and gives it back when the dialog is closed.
  useLayoutEffect(() => {
    const dialog = panel.current;
    dialog?.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      class="sheet arrives"
      aria-label={title}
      ref={panel}
      onCancel={(cancelled) => {
        cancelled.preventDefault();
        onClose();
      }}
    >
      <div class="sheet-head">
        <h2>{title}</h2>
        <button type="button" class="pill" onClick={onClose}>
          <Icon name="close" />
          Close
        </button>
      </div>
      {children}
    </dialog>
  );
}
