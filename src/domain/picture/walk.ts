import type { Rack, Room, Tub } from '../state/place.ts';

/** Racks by room, quarantine last for hygiene, then by name with numbers in number order. */
export function inRackOrder(
  a: { readonly rack: Rack; readonly room: Room | undefined },
  b: { readonly rack: Rack; readonly room: Room | undefined },
): number {
  return (
    Number(a.room?.quarantine ?? false) - Number(b.room?.quarantine ?? false) ||
    inNameOrder(a.room?.name ?? '', b.room?.name ?? '') ||
    inNameOrder(a.rack.name, b.rack.name) ||
    inText(a.rack.id, b.rack.id)
  );
}

const inText = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

const parts = (text: string): string[] => text.split(/(\d+)/);

/** `B2` before `B10`. */
export function inNameOrder(a: string, b: string): number {
  const [left, right] = [parts(a), parts(b)];
  for (let i = 0; i < Math.min(left.length, right.length); i += 1) {
    const [one = '', other = ''] = [left[i], right[i]];
    const order = i % 2 === 1 ? Number(one) - Number(other) : inText(one, other);
    if (order !== 0) return order;
  }
  return left.length - right.length;
}

/** A tub's place along the keeper's walk past its rack; smaller comes first. */
export function walkIndex({ row, column }: Pick<Tub, 'row' | 'column'>, rack: Rack): number {
  switch (rack.walk) {
    case 'rows':
      return row * 100 + column;
    case 'serpentine':
      return row * 100 + (row % 2 === 1 ? column : rack.columns + 1 - column);
    case 'columns':
      return column * 100 + row;
  }
}

/** `B4-2`: rack, row, column; without the column where the rack has only one. */
export const positionText = (
  { row, column }: Pick<Tub, 'row' | 'column'>,
  rack: Pick<Rack, 'name' | 'columns'>,
): string => (rack.columns === 1 ? `${rack.name}${row}` : `${rack.name}${row}-${column}`);
