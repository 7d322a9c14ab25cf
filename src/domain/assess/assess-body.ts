import { daysBetween } from '../core/calendar.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { agoWords } from '../rules/dates.ts';
import type { Animal } from '../state/animal.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

type Scanned = Extract<Draft, { type: 'follicles-scanned' }>;

const SHED_SPACING_DAYS = { hard: 5, soft: 14 };

/** Objections to a shed. Source: shedSpacing. */
export function assessShed(animal: Animal, { facts }: Picture): Verdict {
  const last = animal.sheds.at(-1);
  if (!last) return noObjection;
  const night = facts.nightOf(last.at);
  const days = daysBetween(night, facts.night);
  if (days < 0 || days >= SHED_SPACING_DAYS.soft) return noObjection;
  const message = `It shed ${agoWords(night, facts.night)} already.`;
  return days < SHED_SPACING_DAYS.hard
    ? {
        refusals: [],
        doubts: [{ code: 'shed-twice', message: `${message} The same shed?` }],
        notes: [],
      }
    : {
        refusals: [],
        doubts: [{ code: 'shed-soon', message: `${message} Another one?` }],
        notes: [],
      };
}

const CM_BELOW_MM = 6;
const LARGE_MM = 55;
const JUMP_SHARE = 0.3;

/** Objections to a follicle scan. Source: scanSizes. */
export function assessScan({ found }: Scanned, animal: Animal): Verdict {
  if (animal.sex === 'male') {
    return {
      refusals: [{ code: 'male-scanned', message: `${animal.name} is on record as a male.` }],
      doubts: [],
      notes: [],
    };
  }
  if (found.method !== 'ultrasound' || !found.largestMm) return noObjection;
  const largestMm = Math.max(...found.largestMm);
  const before = lastLargestMm(animal);
  const doubts: Doubt[] = [];
  if (largestMm < CM_BELOW_MM && (before === undefined || before > CM_BELOW_MM)) {
    doubts.push({
      code: 'centimetres',
      message: `${largestMm} mm is very small. Was it centimetres?`,
      instead: { label: `${largestMm * 10} mm`, value: largestMm * 10 },
    });
  } else if (largestMm > LARGE_MM) {
    doubts.push({
      code: 'very-large',
      message: `${largestMm} mm is larger than a ripe follicle. Sure?`,
    });
  } else if (before !== undefined && largestMm < before * (1 - JUMP_SHARE)) {
    doubts.push({
      code: 'fell',
      message: `${before} mm last time, ${largestMm} mm now. Scan again in two weeks before reading it as resorbing.`,
    });
  }
  return { refusals: [], doubts, notes: [] };
}

function lastLargestMm(animal: Animal): number | undefined {
  const sized = (animal.season?.scans ?? []).flatMap(({ found }) =>
    found.method === 'ultrasound' && found.largestMm ? [Math.max(...found.largestMm)] : [],
  );
  return sized.at(-1);
}
