import type { Moment } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import type { AnimalId, TubId } from '../core/ids.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Answers, SheetAsk } from './asked.ts';
import type { Facts, Fault, RowRead } from './item.ts';
import type { Whose } from './who.ts';

/** What the file says of a snake, once its rows are held against each other. */
export interface Described {
  readonly facts: Facts & { readonly positionLine?: number | undefined };
  /** Rows that are its own. */
  readonly rows: readonly RowRead[];
  readonly asks: readonly SheetAsk[];
}

const isSaid = (sex: Facts['sex']): boolean => sex !== undefined && sex !== 'unknown';

/** Of two rows that say different things of one snake, the first stands and the second is asked about. */
export function describe({ name, rows }: Whose, answers: Answers): Described {
  const asks: SheetAsk[] = [];
  const own: RowRead[] = [];
  let facts: Described['facts'] = {};
  let sexLine = 0;
  let hatchLine = 0;
  for (const row of rows) {
    const { sex, hatchedDay, traits, position, arrivedDay } = row.facts;
    const otherSex =
      isSaid(sex) && isSaid(facts.sex) && sex !== facts.sex
        ? `${name} is ${facts.sex ?? ''} on line ${sexLine} and ${sex ?? ''} here.`
        : undefined;
    const otherHatch =
      hatchedDay !== undefined && facts.hatchedDay !== undefined && hatchedDay !== facts.hatchedDay
        ? `${name} hatched ${dateWords(facts.hatchedDay)} by line ${hatchLine}, ${dateWords(hatchedDay)} here.`
        : undefined;
    const message = otherSex ?? otherHatch;
    if (message !== undefined) {
      const key = `${row.line}/named-twice`;
      const answer = answers[key] === 'instead' ? undefined : answers[key];
      asks.push({
        key,
        code: 'named-twice',
        line: row.line,
        name,
        text: name,
        messages: [`${message} Are both the same snake?`],
        accept: 'The same snake',
        leave: 'Leave this row out',
        answer,
      });
      if (answer !== 'accept') continue;
    }
    own.push(row);
    if (sex !== undefined && (facts.sex === undefined || facts.sex === 'unknown'))
      sexLine = row.line;
    if (hatchedDay !== undefined && facts.hatchedDay === undefined) hatchLine = row.line;
    facts = {
      sex: isSaid(facts.sex) ? facts.sex : (sex ?? facts.sex),
      hatchedDay: facts.hatchedDay ?? hatchedDay,
      traits: facts.traits ?? traits,
      arrivedDay: facts.arrivedDay ?? arrivedDay,
      // Where it stood last is where it lives.
      position: position ?? facts.position,
      positionLine: position === undefined ? facts.positionLine : row.line,
    };
  }
  return { facts, rows: own, asks };
}

/** Tubs by position, and who is in them: whoever comes first in the file has the tub. */
export function createTubs(picture: Picture, answers: Answers) {
  const tubs = new Map(picture.walk().map((tub) => [picture.position(tub.id) ?? '', tub.id]));
  const claimed = new Map<TubId, string>();
  return {
    /** Where a snake is to live by the file: a tub, a question, or a cell that is left out. */
    place(
      name: string,
      home: TubId | undefined,
      { position, positionLine = 0 }: Described['facts'],
    ): { readonly tub?: TubId; readonly ask?: SheetAsk; readonly fault?: Fault } {
      if (position === undefined) return {};
      const tub = tubs.get(position);
      if (tub === undefined) {
        const why = `is no tub of yours: ${name} stands in no tub yet`;
        return home === undefined
          ? { fault: { line: positionLine, heading: 'Tub', text: position, why } }
          : {};
      }
      if (tub === home) return {};
      const other =
        claimed.get(tub) ?? picture.ownersOf(tub).find((each) => each.name !== name)?.name;
      const key = `${positionLine}/tub`;
      const answer = answers[key] === 'instead' ? undefined : answers[key];
      const messages = [
        ...(home === undefined
          ? []
          : [`${name} lives in ${picture.position(home) ?? 'another tub'} by your records.`]),
        ...(other === undefined ? [] : [`${position} is the tub of ${other}.`]),
      ];
      if (messages.length === 0 || answer === 'accept') claimed.set(tub, name);
      if (messages.length === 0) return { tub };
      const ask: SheetAsk = {
        key,
        code: 'tub',
        line: positionLine,
        name,
        text: position,
        messages,
        accept: other === undefined ? `Move it to ${position}` : 'Both in one tub',
        leave: home === undefined ? 'No tub yet' : 'Leave it there',
        answer,
      };
      return answer === 'accept' ? { tub, ask } : { ask };
    },
  };
}

/** The record that brings a new snake in: on the day it came, else when it is first heard of. */
export function arrivalOf(
  animal: AnimalId,
  name: string,
  { sex, hatchedDay, traits }: Facts,
  at: Moment,
): Draft {
  return {
    type: 'arrived',
    animal,
    name,
    sex: sex ?? 'unknown',
    ...(hatchedDay === undefined ? {} : { hatchedDay }),
    ...(traits === undefined ? {} : { traits }),
    at,
    precision: 'day',
  };
}

/** What is new about a snake that is here already: only what was not known yet. */
export function learnt(
  { known, name }: Whose,
  { sex, hatchedDay, traits }: Facts,
): { readonly draft?: Draft; readonly differs: readonly string[] } {
  if (!known) return { differs: [] };
  const news = {
    ...(sex !== undefined && sex !== 'unknown' && known.sex === 'unknown' ? { sex } : {}),
    ...(hatchedDay !== undefined && known.hatchedDay === undefined ? { hatchedDay } : {}),
    ...(traits !== undefined && known.traits === undefined ? { traits } : {}),
  };
  const differs = [
    ...(sex !== undefined && sex !== 'unknown' && known.sex !== 'unknown' && sex !== known.sex
      ? [`says ${sex}: ${name} is ${known.sex} by your records`]
      : []),
    ...(hatchedDay !== undefined &&
    known.hatchedDay !== undefined &&
    hatchedDay !== known.hatchedDay
      ? [
          `says hatched ${dateWords(hatchedDay)}: ${name} hatched ${dateWords(known.hatchedDay)} by your records`,
        ]
      : []),
  ];
  return Object.keys(news).length === 0
    ? { differs }
    : { draft: { type: 'identified', animal: known.id, ...news }, differs };
}
