import { instantMs, type Day } from '../core/calendar.ts';
import type { LabelCode } from '../core/code.ts';
import type { AnimalId, EventId, TubId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Animal } from '../state/animal.ts';
import { recordLine, type RecordLine } from './record-line.ts';
import { choreOf, type Chore } from './chore.ts';

export interface AnimalView {
  readonly id: AnimalId;
  readonly name: string;
  readonly sex: Animal['sex'];
  readonly sexedBy?: string | undefined;
  readonly hatchedDay?: Day | undefined;
  readonly traits?: string | undefined;
  readonly position?: string | undefined;
  readonly tub?: TubId | undefined;
  readonly gone?: { readonly how: string; readonly night: Day } | undefined;
  readonly quarantine?: { readonly since: Day; readonly until?: Day | undefined } | undefined;
  readonly dam?: { readonly id: AnimalId; readonly name: string } | undefined;
  readonly sires: readonly { readonly id: AnimalId; readonly name: string }[];
  readonly heldBack: boolean;
  readonly lengthCm?: number | undefined;
  readonly condition?: number | undefined;
  readonly chores: readonly Chore[];
  /** Every mass that counts, oldest first. */
  readonly masses: readonly {
    readonly id: EventId;
    readonly ms: number;
    readonly night: Day;
    readonly massG: number;
  }[];
  /** Offers that count, for the marks under the curve. */
  readonly meals: readonly { readonly ms: number; readonly ate: boolean }[];
  /** Newest first, struck records included. */
  readonly history: readonly RecordLine[];
  /** False while the log is still being read: the history is not whole yet. */
  readonly isWhole: boolean;
  readonly card?: LabelCode | undefined;
}

/** One animal's whole page; undefined when nothing is known of it. */
export function animalView(id: AnimalId, picture: Picture): AnimalView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const { ledger, facts } = picture;
  const events = ledger.history(id);
  const standing = events.filter((event) => ledger.stands(event.id));
  const named = (other: AnimalId) => ({ id: other, name: facts.nameOf(other) });
  const settled = new Map(
    standing.flatMap((event) =>
      event.type === 'meal-settled' ? [[event.offer, event.outcome] as const] : [],
    ),
  );
  return {
    id,
    name: animal.name || 'Unnamed',
    sex: animal.sex,
    sexedBy: animal.sexedBy,
    hatchedDay: animal.hatchedDay,
    traits: animal.traits,
    position: picture.position(picture.whereIs(animal)),
    tub: picture.whereIs(animal),
    gone: animal.gone && { how: animal.gone.how, night: facts.nightOf(animal.gone.at) },
    quarantine: animal.quarantine && {
      since: facts.nightOf(animal.quarantine.since),
      until: animal.quarantine.until,
    },
    dam: animal.dam && named(animal.dam),
    sires: animal.sires.map(named),
    heldBack: animal.heldBack,
    lengthCm: animal.lengthCm,
    condition: animal.condition?.score,
    chores: picture.tasks(id).map(choreOf),
    masses: standing.flatMap((event) =>
      event.type === 'weighed'
        ? [
            {
              id: event.id,
              ms: instantMs(event.at),
              night: facts.nightOf(event.at),
              massG: event.massG,
            },
          ]
        : [],
    ),
    meals: standing.flatMap((event) =>
      event.type === 'meal-offered'
        ? [{ ms: instantMs(event.at), ate: (settled.get(event.id) ?? event.outcome) === 'ate' }]
        : [],
    ),
    history: events
      .toReversed()
      .map((event) => recordLine(event, picture, whyStruck(event, events, picture))),
    isWhole: ledger.hasHistory,
    card: cardOf(id, picture),
  };
}

function whyStruck(
  event: RackEvent,
  others: readonly RackEvent[],
  { ledger }: Picture,
): string | undefined {
  if (ledger.stands(event.id)) return undefined;
  const replaced = others.find(({ replaces }) => replaces?.id === event.id);
  return replaced?.replaces?.reason ?? ledger.reasonStruck(event.id) ?? 'struck out';
}

/** The code on its card, where it has one. */
export function cardOf(id: AnimalId, { ledger }: Picture): LabelCode | undefined {
  for (const subject of ledger.subjects.values()) {
    if ('kind' in subject && subject.kind === 'label' && subject.to?.kind === 'animal') {
      if (subject.to.animal === id) return subject.code;
    }
  }
  return undefined;
}
