import { instantMs, momentOf, type Clock } from '../core/calendar.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import { assessScan, assessShed } from './assess-body.ts';
import { assessProtocol, assessVet } from './assess-household.ts';
import { assessHandOver, assessLeaving, assessSale } from './assess-leaving.ts';
import { assessMeal } from './assess-meal.ts';
import { assessIntroduction } from './assess-pair.ts';
import { assessRoomReading } from './assess-room.ts';
import { assessSeason } from './assess-season.ts';
import { assessWeight } from './assess-weight.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

/** What was written just before, to notice a mass typed twice. */
export type Previous = { readonly name: string; readonly massG: number } | undefined;

const FUTURE_SLACK_MS = 5 * 60_000;

/**
 * What stands against writing a record down, held against all that is known.
 *
 * Whether its fields have the right shape is the schema's matter, not looked at here.
 */
export function assess(draft: Draft, picture: Picture, clock: Clock, previous: Previous): Verdict {
  if (draft.at !== undefined && instantMs(draft.at) > clock.ms + FUTURE_SLACK_MS) {
    return {
      refusals: [
        { code: 'future', message: 'That has not happened yet. Pick tonight or an earlier night.' },
      ],
      doubts: [],
      notes: [],
    };
  }
  const then = onItsNight(draft, picture);
  if (draft.type === 'room-read' || draft.type === 'incubator-read')
    return assessRoomReading(draft);
  if (draft.type === 'introduced') return assessIntroduction(draft, then);
  if (draft.type === 'protocol-set') return assessProtocol(draft, picture);
  if (draft.type === 'vet-stated') return assessVet(draft);
  const animal = 'animal' in draft ? picture.animal(draft.animal) : undefined;
  if (!animal) return noObjection;
  const verdict =
    draft.type === 'ovulated' || draft.type === 'laid'
      ? assessSeason(draft, animal, then, momentOf(clock))
      : byKind(draft, animal, then, previous);
  const gone = goneDoubt(draft, animal);
  return gone ? { ...verdict, doubts: [gone, ...verdict.doubts] } : verdict;
}

/** What is written down later is held against its own night, not against tonight. */
function onItsNight({ at }: Draft, picture: Picture): Picture {
  if (at === undefined) return picture;
  return { ...picture, facts: { ...picture.facts, night: picture.facts.nightOf(at) } };
}

function byKind(draft: Draft, animal: Animal, picture: Picture, previous: Previous): Verdict {
  switch (draft.type) {
    case 'weighed':
      return assessWeight(draft, animal, picture, previous);
    case 'meal-offered':
      return assessMeal(draft, animal, picture);
    case 'shed':
      return assessShed(draft, animal, picture);
    case 'follicles-scanned':
      return assessScan(draft, animal, picture);
    case 'left':
      return assessLeaving(draft, animal, picture);
    case 'reserved':
    case 'sold':
      return assessSale(animal, picture);
    case 'handed-over':
      return assessHandOver(draft, animal, picture);
    case 'moved':
      return assessMove(draft, animal, picture);
    default:
      return noObjection;
  }
}

/** What may well be said of one that has left. */
const ofTheGone: ReadonlySet<Draft['type']> = new Set([
  'came-back',
  'arrived',
  'sale-ended',
  'source-stated',
]);

/** Records about one that was sold or died are kept only on the keeper's word. */
function goneDoubt(draft: Draft, animal: Animal): Doubt | undefined {
  return animal.gone && !ofTheGone.has(draft.type)
    ? {
        code: 'gone',
        message: `${animal.name} is on record as ${animal.gone.how}. Write it anyway?`,
      }
    : undefined;
}

function assessMove(
  { tub }: Extract<Draft, { type: 'moved' }>,
  animal: Animal,
  picture: Picture,
): Verdict {
  const other = picture.ownersOf(tub).find(({ id }) => id !== animal.id);
  return other
    ? {
        refusals: [],
        doubts: [
          {
            code: 'occupied',
            message: `${other.name} lives in ${picture.position(tub) ?? 'that tub'}. Both in one tub?`,
          },
        ],
        notes: [],
      }
    : noObjection;
}
