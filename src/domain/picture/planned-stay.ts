import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import type { PlannedStay } from '../rules/rule.ts';
import type { Animal } from '../state/animal.ts';

/** The next visit that a kept plan has for an animal, tonight or later. */
export function plannedStay(
  id: AnimalId,
  plan: EventOf<'visits-planned'> | undefined,
  night: Day,
  animal: (id: AnimalId) => Animal | undefined,
): PlannedStay | undefined {
  const next = (plan?.visits ?? [])
    .filter((visit) => (visit.male === id || visit.female === id) && visit.in >= night)
    .toSorted((a, b) => (a.in < b.in ? -1 : 1))[0];
  const mate = next && animal(next.male === id ? next.female : next.male);
  return plan && next && mate && !mate.gone
    ? { mate, in: next.in, out: next.out, id: plan.id }
    : undefined;
}
