import type { Move } from '../../domain/views/moves-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Unfolds } from '../components/Unfolds.tsx';

/** One male to be moved: from which tub, to which, and why. */
export function MoveLine({
  move,
  isBegun,
  onDone,
}: {
  readonly move: Move;
  readonly isBegun: boolean;
  readonly onDone: () => void;
}) {
  const { kind, male, female, blocked, because } = move;
  const [from, to] = kind === 'in' ? [male, female] : [female, male];
  return (
    <li class="board-row">
      <p class="move-ends">
        <span class="plate">{from.position}</span>
        <Icon name={kind === 'in' ? 'next' : 'out'} />
        <span class="plate">{to.position}</span>
      </p>
      <p>
        <strong>{male.name}</strong>{' '}
        {kind === 'in' ? `in with ${female.name}` : `home from ${female.name}`}
        {isBegun && <span class="quiet"> in hand</span>}
      </p>
      <p class="small">{because}</p>
      {blocked === undefined ? (
        <Unfolds summary="Without scanning">
          {() => (
            <button type="button" class="pill" onClick={onDone}>
              <Icon name="check" /> {kind === 'in' ? 'He is in' : 'He is home'}
            </button>
          )}
        </Unfolds>
      ) : (
        <p class="board-stop">Not tonight: {blocked}</p>
      )}
    </li>
  );
}
