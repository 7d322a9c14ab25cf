import type { Previous } from '../assess/assess.ts';
import { instantMs, type Clock } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Zone } from '../csv/wall-clock.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Answers, SheetAsk } from './asked.ts';
import type { Fault, Item } from './item.ts';
import { createMoments } from './moments.ts';
import { arrivalOf, createTubs, describe, learnt } from './newcomers.ts';
import type { RowsRead } from './read-rows.ts';
import { weighUp, type PlacedItem } from './weigh-up.ts';
import { whoIsWho, type NameAsk, type Whose } from './who.ts';

/** What taking a file in would write, and all that was noticed on the way. Nothing is written by it. */
export interface DryRun {
  /** In the order in which they are written: a snake, then its records. */
  readonly drafts: readonly Draft[];
  readonly newAnimals: number;
  readonly knownAnimals: number;
  /** Records that are here already. */
  readonly known: number;
  readonly asks: readonly SheetAsk[];
  readonly faults: readonly Fault[];
}

export interface DryRunWorld {
  readonly picture: Picture;
  readonly clock: Clock;
  readonly zone: Zone;
  readonly answers: Answers;
  /** The id of a snake that is new: the same one each time it is asked for the same name. */
  readonly idOf: (name: string) => AnimalId;
}

/** Holds the rows of a file against the collection and against each other. */
export function dryRun({ rows, faults: unread }: RowsRead, world: DryRunWorld): DryRun {
  const { picture, clock, zone, answers, idOf } = world;
  const who = whoIsWho(rows, picture, answers);
  const moments = createMoments(zone, clock);
  const tubs = createTubs(picture, answers);
  const previous = previousOf(who.snakes);
  const drafts: Draft[] = [];
  const faults: Fault[] = [...unread];
  const asks: SheetAsk[] = who.asks.map((ask) => nameAsk(ask, answers));
  let known = 0;
  for (const { line, why } of who.nobodys) faults.push({ line, heading: 'Name', text: '', why });
  for (const whose of who.snakes) takeUp(whose);
  return {
    drafts,
    newAnimals: drafts.filter(({ type }) => type === 'arrived').length,
    knownAnimals: who.snakes.filter((each) => each.known).length,
    known,
    asks: asks.toSorted((a, b) => a.line - b.line),
    faults: faults.toSorted((a, b) => a.line - b.line),
  };

  function takeUp(whose: Whose): void {
    const { name, known: here } = whose;
    const { facts, rows: own, asks: about } = describe(whose, answers);
    asks.push(...about);
    if (own.length === 0) return;
    const id = here?.id ?? idOf(name);
    const items = own
      .flatMap((row) => row.items)
      .map((item): PlacedItem => ({
        item,
        ...moments(item.when),
        previous: previous.get(item.key),
      }));
    const first = items.toSorted((a, b) => instantMs(a.at) - instantMs(b.at))[0];
    const came = moments(facts.arrivedDay && { day: facts.arrivedDay });
    const firstAt =
      facts.arrivedDay !== undefined && (!first || instantMs(came.at) < instantMs(first.at))
        ? came.at
        : first?.at;
    const arrival = here ? undefined : arrivalOf(id, name, facts, firstAt ?? came.at);
    if (arrival) drafts.push(arrival);
    const line = own[0]?.line ?? 0;
    const news = learnt(whose, facts);
    if (news.draft) drafts.push({ ...news.draft });
    for (const why of news.differs) faults.push({ line, heading: 'Snake', text: name, why });
    const placed = tubs.place(name, here?.tub, facts);
    if (placed.ask) asks.push(placed.ask);
    if (placed.fault) faults.push(placed.fault);
    if (placed.tub !== undefined && !here?.gone) {
      drafts.push({
        type: 'moved',
        animal: id,
        tub: placed.tub,
        ...(here || !arrival ? {} : { at: arrival.at ?? came.at, precision: 'day' as const }),
      });
    }
    const story = { id, name, arrival, history: here ? picture.ledger.history(id) : [], items };
    const weighed = weighUp(story, picture, clock, answers);
    drafts.push(...weighed.drafts);
    asks.push(...weighed.asks);
    known += weighed.known;
    for (const { line: at, text, why } of weighed.refused) {
      faults.push({ line: at, heading: name, text, why });
    }
  }
}

function nameAsk({ key, name, like, line }: NameAsk, answers: Answers): SheetAsk {
  return {
    key,
    code: 'name-slip',
    line,
    name,
    text: name,
    messages: [`${name} is new, and one letter from ${like}.`],
    accept: undefined,
    leave: `${name} is another snake`,
    instead: `It is ${like}`,
    answer: answers[key] === 'accept' ? undefined : answers[key],
  };
}

/** What was weighed on the row before, of another snake on the same day: a mass typed twice. */
function previousOf(snakes: readonly Whose[]): ReadonlyMap<string, Previous> {
  const weighed = snakes
    .flatMap(({ name, rows }) => rows.flatMap(({ items }) => items.map((item) => ({ name, item }))))
    .filter(({ item }) => item.content.type === 'weighed')
    .toSorted((a, b) => a.item.line - b.item.line);
  const previous = new Map<string, Previous>();
  for (const [i, { name, item }] of weighed.entries()) {
    const before = weighed[i - 1];
    if (
      before &&
      before.name !== name &&
      isSameDay(before.item, item) &&
      before.item.content.type === 'weighed'
    ) {
      previous.set(item.key, { name: before.name, massG: before.item.content.massG });
    }
  }
  return previous;
}

const isSameDay = (a: Item, b: Item): boolean => a.when !== undefined && a.when.day === b.when?.day;
