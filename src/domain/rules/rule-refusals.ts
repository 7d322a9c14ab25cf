import { readRefusals } from '../prey/read-refusals.ts';
import { refusalFacts } from '../prey/refusal-facts.ts';
import { passedOn } from './passed.ts';
import { refusedInRow } from './refusals-in-row.ts';
import type { Rule } from './rule.ts';

export const refusals: Rule = {
  id: 'F4',
  says: 'Refusals are read by stage, season and weight; a count of them alone misleads.',
  source: 'refusals',
  check(animal, room) {
    const refused = refusedInRow(animal);
    const newest = refused.at(-1);
    if (!newest) return undefined;
    const passed = passedOn(animal, 'F4', room);
    if (passed !== undefined && passed >= room.nightOf(newest.at)) return undefined;
    const read = refusalFacts(animal, room);
    if (!read || read.facts.kind === 'hatchling') return undefined;
    const reading = readRefusals(read.facts, room.protocol);
    if (!reading || reading.level === 'expected') return undefined;
    const meal = animal.offers.findLast(
      ({ outcome, how }) => how !== 'assisted' && (outcome === 'ate' || outcome === 'partly'),
    );
    return {
      act: reading.asksVet ? 'call' : 'check',
      asks: reading.asksVet
        ? 'Refuses beyond what is usual: ask a reptile vet'
        : `Refuses: ${reading.looks[0] ?? 'look at it'}`,
      due: room.night,
      state: reading.level === 'act' ? 'overdue' : 'due',
      alarm: false,
      because: reading.because,
      records: [...new Set([...refused, ...(meal ? [meal] : []), ...read.weights])].map(
        ({ id }) => id,
      ),
    };
  },
};
