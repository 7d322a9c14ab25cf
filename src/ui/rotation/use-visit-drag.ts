import { useRef, useState } from 'preact/hooks';

/** So far a finger may tremble before it drags, in CSS pixels. */
const TREMBLE = 8;

interface Start {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
}

export interface VisitDrag {
  readonly isDragging: boolean;
  /** The tile under the finger. */
  readonly over: string | undefined;
  /** The tiles stand where the finger is not. */
  readonly isLow: boolean;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: (event: PointerEvent) => void;
    readonly onPointerCancel: () => void;
    readonly onClick: () => void;
  };
}

/**
 * A handle that is dragged onto a tile named by `data-drop`, or tapped. `onDrop` gets that name where
 * it was let go over a tile.
 */
export function useVisitDrag(onDrop: (key: string) => void, onTap: () => void): VisitDrag {
  const start = useRef<Start | undefined>(undefined);
  /** A browser sends a click after a drag as well. */
  const wasDragged = useRef(false);
  const [isDragging, setIsDragging] = useState(false);
  const [over, setOver] = useState<string>();
  const end = () => {
    start.current = undefined;
    setIsDragging(false);
    setOver(undefined);
  };
  return {
    isDragging,
    over,
    isLow: start.current === undefined || start.current.y < innerHeight / 2,
    handlers: {
      onPointerDown(event) {
        if (!event.isPrimary || event.button !== 0) return;
        start.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY };
        wasDragged.current = false;
        (event.currentTarget as Element).setPointerCapture(event.pointerId);
      },
      onPointerMove(event) {
        const from = start.current;
        if (from?.pointer !== event.pointerId) return;
        const { clientX: x, clientY: y } = event;
        if (!wasDragged.current && Math.hypot(x - from.x, y - from.y) < TREMBLE) return;
        wasDragged.current = true;
        setIsDragging(true);
        setOver(tileAt(x, y));
      },
      onPointerUp(event) {
        if (start.current?.pointer !== event.pointerId) return;
        const key = wasDragged.current ? tileAt(event.clientX, event.clientY) : undefined;
        end();
        if (key !== undefined) onDrop(key);
      },
      onPointerCancel: end,
      onClick() {
        if (!wasDragged.current) onTap();
        wasDragged.current = false;
      },
    },
  };
}

const tileAt = (x: number, y: number): string | undefined =>
  document.elementFromPoint(x, y)?.closest('[data-drop]')?.getAttribute('data-drop') ?? undefined;
