import { useEffect, useRef } from 'preact/hooks';
import { light } from '../light.ts';
import type { RoomDrawing } from './draw-room.ts';

/** Readings against the programme’s band. The same numbers stand in a table beside it. */
export function RoomPlot({
  drawing,
  unit,
  caption,
}: {
  readonly drawing: RoomDrawing;
  readonly unit: string;
  readonly caption: string;
}) {
  const box = useRef<HTMLDivElement>(null);
  const lit = light.value;
  const { points, bands } = drawing;
  const isEmpty = points.length === 0;
  useEffect(() => {
    const element = box.current;
    if (!element || isEmpty) return undefined;
    let remove: (() => void) | undefined;
    let isOver = false;
    void import('./draw-room.ts').then(({ drawRoom }) => {
      if (!isOver) remove = drawRoom(element, drawing);
    });
    return () => {
      isOver = true;
      remove?.();
    };
  }, [points, bands, unit, lit]);
  return (
    <figure class="curve">
      {!isEmpty && <div class="curve-box" role="img" aria-label={caption} ref={box} />}
      <figcaption class="small quiet">{caption}</figcaption>
    </figure>
  );
}
