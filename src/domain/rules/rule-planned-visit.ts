import { shutWindow, type ShutWindow } from '../season/pairing-window.ts';
import { daysWords } from '../core/day-words.ts';
import { daysBetween } from '../core/calendar.ts';
import { pairingWait } from './pairing-block.ts';
import type { Rule } from './rule.ts';

const shutWords = (shut: ShutWindow): string =>
  shut.by === 'size' ? `largest follicle ${shut.mm} mm` : `${shut.stage ?? 'not building'} now`;

export const plannedVisit: Rule = {
  id: 'P2',
  says: 'A male goes in on the evening of the plan you kept, if nothing has come between.',
  source: 'malesShared',
  check(animal, room) {
    if (animal.sex !== 'male' || animal.visit) return undefined;
    const planned = room.planned(animal);
    if (planned?.in !== room.night) return undefined;
    const { mate } = planned;
    const hasBeen = animal.season?.stays.some(
      ({ female, since }) => female === mate.id && room.nightOf(since) === room.night,
    );
    if (hasBeen) return undefined;
    const standing = room.standing(mate);
    const shut = shutWindow(standing, room.protocol.pairStopMm);
    const herWait = pairingWait(mate, room);
    return {
      act: 'pair',
      asks: `Put ${animal.name || 'him'} in with ${mate.name}`,
      due: room.night,
      state: 'due',
      alarm: false,
      blocked:
        pairingWait(animal, room) ??
        (shut && `${mate.name}: ${shutWords(shut)}`) ??
        (herWait === undefined ? undefined : `${mate.name}: ${herWait}`),
      because: [
        `By the plan you kept, for ${daysWords(daysBetween(planned.in, planned.out))}.`,
        ...(standing?.because ?? []).map((fact) => `${mate.name}: ${fact}`),
      ],
      records: [planned.id, ...(standing?.records ?? [])],
    };
  },
};
