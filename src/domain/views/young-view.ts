import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId, ClutchId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { clutchFathers, malesAmong, type Sire } from '../rotation/paternity.ts';
import type { Clutch } from '../state/clutch.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';
import { eventWords } from './words.ts';

/** One clutch of hers, to count its young. */
export interface ClutchChoice {
  readonly clutch: ClutchId;
  readonly laid: Day;
  /** "laid: 6 good, 1 slug" */
  readonly says: string;
  /** Males that were in with her before it, the last first. */
  readonly met: readonly NamedKin[];
  /** As the clutch carries them, to begin with. */
  readonly fathers: readonly (AnimalId | 'unknown')[];
  /** What was counted last. */
  readonly counted: Pick<EventOf<'young-counted'>, 'counts' | 'sires'> | undefined;
}

export interface YoungView {
  readonly self: NamedKin;
  /** The newest first. */
  readonly clutches: readonly ClutchChoice[];
}

/** A male counts as a possible father of a clutch from then on. */
const MET_WITHIN_DAYS = 300;

/** A female's clutches, whose young may be counted; undefined when nothing is known of her. */
export function youngView(id: AnimalId, picture: Picture): YoungView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const { ledger, facts } = picture;
  const events = ledger.history(id).filter((event) => ledger.stands(event.id));
  const laid = events.filter((event) => event.type === 'laid');
  return {
    self: namedKin(id, picture),
    clutches: laid.toReversed().map((event): ClutchChoice => {
      const night = facts.nightOf(event.at);
      const sires = siresOf(event.clutch, picture);
      const counted = (animal.youngCounted ?? []).find(({ clutch }) => clutch === event.clutch);
      return {
        clutch: event.clutch,
        laid: night,
        says: eventWords(event, facts.nameOf),
        met: [...new Set([...metBefore(id, night, events, picture), ...malesAmong(sires)])].map(
          (male) => namedKin(male, picture),
        ),
        fathers: sires.flatMap(({ male }) => (male === 'none' ? [] : [male])),
        counted: counted && { counts: counted.counts, sires: counted.sires },
      };
    }),
  };
}

function siresOf(id: ClutchId, picture: Picture): readonly Sire[] {
  const clutch = picture.ledger.subjects.get(id) as Clutch | undefined;
  return clutch ? clutchFathers(clutch, picture).sires : [];
}

function metBefore(
  dam: AnimalId,
  laid: Day,
  events: readonly RackEvent[],
  picture: Picture,
): readonly AnimalId[] {
  const males = events.flatMap((event) => {
    if (event.type !== 'introduced' || event.female !== dam) return [];
    const days = daysBetween(picture.facts.nightOf(event.at), laid);
    return days >= 0 && days <= MET_WITHIN_DAYS ? [event.male] : [];
  });
  return males.toReversed();
}
