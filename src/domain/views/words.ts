import { assertNever } from '../core/fault.ts';
import { showGrams } from '../core/units.ts';
import type { AnimalId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import { showPrey } from '../protocol/planned-meal.ts';
import { clutchWords } from './clutch-words.ts';
import { preyWords } from './prey-words.ts';
import { rotationWords } from './rotation-words.ts';
import { saleWords } from './sale-words.ts';

export const outcomeWords = {
  ate: 'ate',
  refused: 'refused',
  left: 'left overnight',
  partly: 'ate part of',
} as const;

/** A record in a few words, as its line in a history. `nameOf` names the other snake of a pair. */
export function eventWords(event: RackEvent, nameOf: (id: AnimalId) => string): string {
  switch (event.type) {
    case 'meal-offered':
      return event.outcome === 'left'
        ? `${showPrey(event.prey)} left overnight`
        : `${outcomeWords[event.outcome]} ${showPrey(event.prey)}`;
    case 'meal-settled':
      return event.outcome === 'ate'
        ? 'the meal left was eaten'
        : event.outcome === 'partly'
          ? 'the meal left was eaten in part'
          : 'the meal left was refused';
    case 'regurgitated':
      return 'brought up its meal';
    case 'weighed':
      return `weighed ${showGrams(event.massG)}${event.doubt ? ' (doubted)' : ''}`;
    case 'opaque-seen':
      return 'in blue';
    case 'shed':
      return `shed ${event.quality}${event.preLay ? ', pre-lay' : ''}`;
    case 'faeces-seen':
      return event.what === 'abnormal' ? 'abnormal faeces' : `${event.what} seen`;
    case 'condition-judged':
      return `condition ${event.score} of 5`;
    case 'measured':
      return `${event.lengthCm} cm long`;
    case 'introduced':
      return `${nameOf(event.male)} in with ${nameOf(event.female)}`;
    case 'pair-seen':
      return `${event.seen}: ${nameOf(event.male)} and ${nameOf(event.female)}`;
    case 'taken-out':
      return `${nameOf(event.male)} taken out from ${nameOf(event.female)}`;
    case 'follicles-scanned':
      return scanWords(event.found);
    case 'sign-seen':
      return `sign: ${event.sign}`;
    case 'ovulated':
      return `ovulation, ${event.sure}`;
    case 'nothing-yet':
      return `looked for ${event.lookedFor}: nothing yet`;
    case 'nest-box-set':
      return `nest box ${event.is}`;
    case 'laid':
      return laidWords(event);
    case 'season-closed':
      return `season over: ${event.why}`;
    case 'young-counted':
    case 'gene-tested':
    case 'gene-made':
    case 'pairing-reasoned':
      return geneWords(event);
    case 'pair-wanted':
    case 'visit-ruled':
    case 'evenings-away':
    case 'visits-planned':
      return rotationWords(event, nameOf);
    case 'prey-stocked':
    case 'prey-thawed':
    case 'prey-thrown-out':
    case 'prey-counted':
    case 'prey-size-stated':
    case 'feeding-excepted':
    case 'started-smaller':
      return preyWords(event);
    case 'paternity-stated':
    case 'eggs-set':
    case 'eggs-checked':
    case 'box-aired':
    case 'hatching-seen':
    case 'hatched':
    case 'eggs-felt':
    case 'clutch-closed':
    case 'incubator-made':
    case 'incubator-retired':
    case 'incubator-read':
    case 'incubator-logged':
    case 'heat-failed':
    case 'heat-back':
      return clutchWords(event, nameOf);
    case 'put-up-for-sale':
    case 'taken-off-sale':
    case 'reserved':
    case 'sold':
    case 'handed-over':
    case 'sale-ended':
    case 'source-stated':
      return saleWords(event);
    case 'photo-kept':
      return 'picture kept';
    case 'arrived':
      return `arrived as ${event.name}`;
    case 'identified':
      return identifiedWords(event);
    case 'parents-stated':
      return 'parents stated';
    case 'moved':
      return `moved${event.place ? ` to ${event.place}` : ''}`;
    case 'quarantine-started':
      return event.until ? `quarantine until ${event.until}` : 'quarantine started';
    case 'quarantine-ended':
      return 'quarantine ended';
    case 'health-noted':
      return `${['', 'slight', 'clear', 'grave'][event.severity] ?? ''} sign: ${event.system}`;
    case 'treated':
      return `treatment as prescribed by ${event.prescribedBy}`;
    case 'tested':
      return `tested for ${event.what}${event.result ? `: ${event.result}` : ''}`;
    case 'held-back':
      return 'held back';
    case 'left':
      return event.how;
    case 'came-back':
      return 'came back';
    case 'noted':
      return event.text;
    case 'passed-over':
      return `passed over: ${event.reason}`;
    case 'tub-cleaned':
      return `${event.how} clean`;
    case 'water-seen':
      return `water ${event.state}`;
    case 'struck':
      return `struck out: ${event.reason}`;
    case 'protocol-set':
      return event.school === undefined ? 'numbers of the protocol set' : `school: ${event.school}`;
    case 'vet-stated':
      return `vet: ${event.name}, ${event.phone}`;
    case 'room-made':
      return `room ${event.name}`;
    case 'room-read':
    case 'room-logged':
    case 'room-programme-set':
      return roomWords(event);
    case 'rack-made':
      return `rack ${event.name}`;
    case 'rack-removed':
      return 'rack removed';
    case 'tub-made':
      return 'tub made';
    case 'tub-moved':
      return 'tub moved';
    case 'tub-removed':
      return 'tub removed';
    case 'label-printed':
      return `${event.codes.length} labels printed`;
    case 'label-assigned':
      return 'label assigned';
    default:
      return assertNever(event);
  }
}

type GeneRecord = Extract<
  RackEvent,
  { type: 'young-counted' | 'gene-tested' | 'gene-made' | 'pairing-reasoned' }
>;

function geneWords(event: GeneRecord): string {
  switch (event.type) {
    case 'young-counted':
      return `young counted: ${event.counts.map(({ count, looks }) => `${count} ${looks}`).join(', ')}`;
    case 'gene-tested':
      return `DNA test, ${event.allele}: ${event.result}`;
    case 'gene-made':
      return `gene ${event.name}: ${event.mode}`;
    case 'pairing-reasoned':
      return `paired in spite of a caution: ${event.reason}`;
  }
}

type RoomRecord = Extract<RackEvent, { type: 'room-read' | 'room-logged' | 'room-programme-set' }>;

function roomWords(event: RoomRecord): string {
  switch (event.type) {
    case 'room-read':
      return event.entered
        ? `${event.spot} ${event.entered.temp} °F (${event.tempC.toFixed(1)} °C)`
        : `${event.spot} ${event.tempC} °C`;
    case 'room-logged':
      return `${event.readings.length} readings of ${event.sensor}, ${event.spot}`;
    case 'room-programme-set':
      return `programme ${event.name} from ${event.from}`;
  }
}

function scanWords(found: Extract<RackEvent, { type: 'follicles-scanned' }>['found']): string {
  if (found.method === 'palpation') return `felt: ${found.felt}`;
  return found.largestMm
    ? `scan: largest ${found.largestMm[0]} × ${found.largestMm[1]} mm`
    : 'scan: none seen';
}

function laidWords(event: Extract<RackEvent, { type: 'laid' }>): string {
  const counts = (['good', 'slugs', 'unsure'] as const).flatMap((kind) =>
    event[kind] === undefined ? [] : [`${event[kind]} ${kind}`],
  );
  return counts.length > 0 ? `laid: ${counts.join(', ')}` : 'laid, not counted';
}

function identifiedWords({
  name,
  sex,
  traits,
}: Extract<RackEvent, { type: 'identified' }>): string {
  const facts = [name && `named ${name}`, sex && `sex: ${sex}`, traits].filter(
    (fact) => fact !== undefined,
  );
  return facts.length > 0 ? facts.join(', ') : 'identified';
}
