import type { Prey } from '../events/feeding.ts';
import { showPrey } from '../protocol/planned-meal.ts';
import type { Protocol } from '../protocol/values.ts';
import { chanceEats, type Acceptance } from './acceptance.ts';
import { enoughWith, expectedCount, sumOfCounts, timesPieces } from './count-chances.ts';

/** A meal that is due tonight and not blocked. */
export interface DueMeal {
  readonly meal: Pick<Prey, 'kind' | 'size' | 'eachG' | 'count'>;
  readonly acceptance: Acceptance;
  /** What it refuses goes to no other animal, as in quarantine: its meal is always thawed. */
  readonly keepsOwn: boolean;
}

/** How many pieces of one size to take out tonight. */
export interface ThawLine {
  readonly kind: Prey['kind'];
  readonly size: string;
  readonly thaw: number;
  /** Pieces, one meal each for all that are due. */
  readonly offered: number;
  readonly expected: number;
  /** What is thawed over what is expected to be eaten, rounded. */
  readonly spare: number;
  readonly animals: number;
  readonly because: readonly string[];
}

export const sizeKey = ({ kind, size }: Pick<Prey, 'kind' | 'size'>): string => `${kind} ${size}`;

/**
 * What to thaw tonight, by size, heaviest first.
 *
 * What one refuses is offered to the next that takes the same size, so not everyone needs a piece of its own: enough are
 * thawed for `thawEnoughShare` of nights. Nothing is frozen again. Source: preyModel.
 */
export function thawList(due: readonly DueMeal[], protocol: Protocol): readonly ThawLine[] {
  const bySize = new Map<string, DueMeal[]>();
  for (const each of due) {
    const key = sizeKey(each.meal);
    bySize.set(key, [...(bySize.get(key) ?? []), each]);
  }
  return [...bySize.values()]
    .toSorted((a, b) => (b[0]?.meal.eachG ?? 0) - (a[0]?.meal.eachG ?? 0))
    .flatMap((meals) => lineOf(meals, protocol.thawEnoughShare) ?? []);
}

function lineOf(meals: readonly DueMeal[], share: number): ThawLine | undefined {
  const [first] = meals;
  if (!first) return undefined;
  const { kind, size } = first.meal;
  const pieces = (list: readonly DueMeal[]): number =>
    list.reduce((sum, { meal }) => sum + meal.count, 0);
  const chancesOf = (list: readonly DueMeal[]) =>
    sumOfCounts(
      list.map(({ meal, acceptance }) => {
        const eats = chanceEats(acceptance);
        return timesPieces([1 - eats, eats], meal.count);
      }),
    );
  const own = meals.filter(({ keepsOwn }) => keepsOwn);
  const shared = meals.filter(({ keepsOwn }) => !keepsOwn);
  const offered = pieces(meals);
  const expected = expectedCount(chancesOf(meals));
  const ownPieces = pieces(own);
  // A meal must be whole for the largest eater.
  const largest = Math.max(0, ...shared.map(({ meal }) => meal.count));
  const thaw = ownPieces + Math.max(largest, enoughWith(share, chancesOf(shared)));
  const spare = Math.max(0, Math.round(thaw - expected));
  const line = { kind, size, thaw, offered, expected, spare, animals: meals.length };
  return { ...line, because: because(line, share, ownPieces) };
}

function because(
  { kind, size, thaw, offered, expected, spare, animals }: Omit<ThawLine, 'because'>,
  share: number,
  ownPieces: number,
): readonly string[] {
  const piece = (count: number): string => showPrey({ kind, size, count, state: 'thawed' });
  const lines = [
    `${animals === 1 ? '1 snake is' : `${animals} snakes are`} due: ${piece(offered)}. By their appetite, about ${expected.toFixed(1)} will be eaten.`,
  ];
  if (thaw < offered) {
    lines.push(
      `${thaw} are enough on ${Math.round(100 * share)} of 100 nights, where what one refuses goes to the next.`,
    );
  }
  if (spare > 0) lines.push(`About ${spare} will be spare: bin them, never freeze again.`);
  if (ownPieces > 0) {
    lines.push(`${ownPieces} for quarantine: what is refused there goes to no other snake.`);
  }
  return lines;
}
