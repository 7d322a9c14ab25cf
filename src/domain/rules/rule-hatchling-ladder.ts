import { nonFeederLadder } from '../prey/non-feeder.ts';
import { readRefusals } from '../prey/read-refusals.ts';
import { refusalFacts } from '../prey/refusal-facts.ts';
import { passedOn } from './passed.ts';
import { refusedInRow } from './refusals-in-row.ts';
import type { Rule } from './rule.ts';

export const hatchlingLadder: Rule = {
  id: 'F3',
  says: 'A hatchling that does not eat is looked at by refusals, weeks and weight lost, side by side.',
  source: 'nonFeeders',
  vet: true,
  check(animal, room) {
    const refused = refusedInRow(animal);
    const newest = refused.at(-1);
    if (!newest) return undefined;
    const passed = passedOn(animal, 'F3', room);
    if (passed !== undefined && passed >= room.nightOf(newest.at)) return undefined;
    const read = refusalFacts(animal, room);
    if (read?.facts.kind !== 'hatchling') return undefined;
    const reading = readRefusals(read.facts, room.protocol);
    const rung = nonFeederLadder.find(({ id }) => id === reading?.row);
    if (!reading || !rung || reading.level === 'expected') return undefined;
    const isLast = reading.level === 'act';
    return {
      act: isLast ? 'call' : 'check',
      asks: isLast
        ? `${animal.name || 'It'} does not eat: call a reptile vet`
        : `Does not eat (${rung.id}): ${rung.looks[0] ?? 'look at it'}`,
      due: room.night,
      state: isLast ? 'overdue' : 'due',
      alarm: isLast,
      because: reading.because,
      records: [...refused, ...read.weights].map(({ id }) => id),
    };
  },
};
