import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
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
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  const keepInside = (event: KeyboardEvent) => {
    if (event.key === 'Escape') onClose();
    if (event.key !== 'Tab' || !panel.current) return;
    const stops = panel.current.querySelectorAll<HTMLElement>('button,input,select,textarea,a');
    const [first, last] = [stops[0], stops[stops.length - 1]];
    if (event.shiftKey && document.activeElement === first) {
      event.preventDefault();
      last?.focus();
    } else if (!event.shiftKey && document.activeElement === last) {
      event.preventDefault();
      first?.focus();
    }
  };
  return (
    <div class="sheet-back">
      <div
        class="sheet arrives"
        role="dialog"
        aria-modal="true"
        aria-label={title}
        tabIndex={-1}
        ref={panel}
        onKeyDown={keepInside}
      >
        <div class="sheet-head">
          <h2>{title}</h2>
          <button type="button" class="pill" onClick={onClose}>
            <Icon name="close" />
            Close
          </button>
        </div>
        {children}
      </div>
    </div>
  );
}
