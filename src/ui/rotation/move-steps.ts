import type { TubId } from '../../domain/core/ids.ts';
import type { Draft } from '../../domain/events/event.ts';
import type { Move, MoveEnd } from '../../domain/views/moves-view.ts';

/** What the scan of a tub means while males are moved. */
export type Step =
  | { readonly kind: 'begun'; readonly move: Move }
  | { readonly kind: 'done'; readonly move: Move }
  | { readonly kind: 'wrong'; readonly says: string };

/** Where a male is taken from, and where he is brought: his tub and hers, or the other way round. */
const endsOf = ({ kind, male, female }: Move): readonly [MoveEnd, MoveEnd] =>
  kind === 'in' ? [male, female] : [female, male];

/** The first scan picks a move, the second completes it; any other tub is named and moves nobody. */
export function stepAt(tub: TubId, moves: readonly Move[], begun: Move | undefined): Step {
  if (begun) {
    const [, to] = endsOf(begun);
    return to.tub === tub
      ? { kind: 'done', move: begun }
      : { kind: 'wrong', says: `${begun.male.name} goes to ${to.position}. That is another tub.` };
  }
  const move = moves.find((each) => endsOf(each)[0].tub === tub);
  if (!move) return { kind: 'wrong', says: 'No male is to be taken from that tub tonight.' };
  return move.blocked === undefined
    ? { kind: 'begun', move }
    : { kind: 'wrong', says: `Not tonight: ${move.blocked}` };
}

/** What a move writes down. */
export function moveDraft({ kind, male, female }: Move): Draft {
  const pair = { male: male.id, female: female.id };
  if (kind === 'out') return { type: 'taken-out', ...pair };
  if (female.tub === undefined) throw new Error(`${female.name} has no tub to bring him to.`);
  return { type: 'introduced', ...pair, tub: female.tub };
}
