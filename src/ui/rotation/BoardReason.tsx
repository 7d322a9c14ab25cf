import type { MateCell } from '../../domain/views/mates-view.ts';
import type { BoardRow } from '../../domain/views/rotation-view.ts';
import { ReasonForm } from '../choosing/ReasonForm.tsx';
import { Unfolds } from '../components/Unfolds.tsx';

/** What keeps two out of every plan, until the keeper says why they shall meet all the same. */
export function BoardReason({
  cell,
  female,
}: {
  readonly cell: MateCell;
  readonly female: BoardRow;
}) {
  const pair = { male: { id: cell.male, name: cell.name }, female, cautions: cell.asked };
  return (
    <div class="caution">
      <p>
        <b>Not planned without your reason.</b>
      </p>
      {cell.missing.map(({ id, says }) => (
        <p class="small" key={id}>
          {says}
        </p>
      ))}
      <Unfolds summary="Plan them for a reason">{() => <ReasonForm pair={pair} />}</Unfolds>
    </div>
  );
}
