import { assess, type Previous } from '../assess/assess.ts';
import type { Doubt } from '../assess/doubt.ts';
import { instantMs, type Clock, type Day, type Moment } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Draft, RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { standingOf } from '../season/standing-of.ts';
import { unknownAnimal, type Animal } from '../state/animal.ts';
import { applyToAnimal } from '../state/apply-to-animal.ts';
import type { Answer, Answers, SheetAsk } from './asked.ts';
import type { Item } from './item.ts';
import type { Placed } from './moments.ts';
import { createThereAlready, sameRow } from './there-already.ts';

/** An item, when it was, and what was weighed just before it in the file. */
export interface PlacedItem extends Placed {
  readonly item: Item;
  readonly previous: Previous;
}

/** What became of the items of one snake. */
export interface WeighedUp {
  readonly drafts: readonly Draft[];
  readonly known: number;
  readonly asks: readonly SheetAsk[];
  readonly refused: readonly {
    readonly line: number;
    readonly text: string;
    readonly why: string;
  }[];
}

interface Story {
  readonly id: AnimalId;
  readonly name: string;
  /** What brings it in, where it is new. */
  readonly arrival?: Draft | undefined;
  readonly history: readonly RackEvent[];
  readonly items: readonly PlacedItem[];
}

/**
 * Holds each record of a file against what was so at its time: the snake's own records before it, and
 * the rows of the file before it that count. The checks are those of every entry.
 */
export function weighUp(
  { id, name, arrival, history, items }: Story,
  picture: Picture,
  clock: Clock,
  answers: Answers,
): WeighedUp {
  const there = createThereAlready(history, (event) => picture.ledger.reasonStruck(event));
  const drafts: Draft[] = [];
  const asks: SheetAsk[] = [];
  const refused: WeighedUp['refused'][number][] = [];
  const doubled = new Map<Item, number>();
  const firstLine = new Map<string, number>();
  let known = 0;
  const fresh = items.filter(({ item }) => {
    const same = sameRow(item);
    const before = firstLine.get(same);
    if (before === undefined) firstLine.set(same, item.line);
    if (there.take(item.content, item.when)) {
      known += 1;
      return false;
    }
    if (before !== undefined) doubled.set(item, before);
    return true;
  });
  let animal = arrival
    ? applyToAnimal(undefined, [asEvent(arrival, '')], id)
    : { ...unknownAnimal(id), ...timeless(picture.animal(id)) };
  const asOf = (at: Moment): Picture => asOfThen(picture, animal, picture.facts.nightOf(at));
  for (const step of inOrder(history, fresh, picture)) {
    if ('event' in step) animal = applyToAnimal(animal, [step.event], id);
    else settle(step.placed);
  }
  return { drafts, known, asks, refused };

  function settle({ item, at, precision, previous }: PlacedItem): void {
    const { key, content, line, text, when } = item;
    const same = doubled.get(item);
    const isTwice = same !== undefined && askTwice(item, same) === 'accept';
    if (same !== undefined && !isTwice) return;
    const draft = { ...content, animal: id, at, precision } as Draft;
    const verdict = assess(draft, asOf(at), clock, previous);
    const likely = verdict.doubts.find((doubt) => doubt.instead)?.instead;
    const meant =
      likely && content.type === 'weighed' ? { ...content, massG: likely.value } : undefined;
    if (meant && there.take(meant, when)) {
      known += 1;
      return;
    }
    const isRefused = verdict.refusals.length > 0;
    const doubts: readonly Pick<Doubt, 'code' | 'message'>[] = [
      ...item.asks,
      ...verdict.refusals,
      ...verdict.doubts,
    ];
    const [first] = doubts;
    if (isRefused && !meant) {
      refused.push({ line, text, why: verdict.refusals.map(({ message }) => message).join(' ') });
      return;
    }
    const answer = first && answerTo(answers[key], isRefused, meant !== undefined);
    // One that happened twice was answered for; what else speaks against it does so for that reason.
    if (first && !isTwice) {
      asks.push({
        key,
        code: first.code,
        line,
        name,
        text,
        messages: doubts.map(({ message }) => message),
        accept: isRefused ? undefined : 'Take it as it is',
        leave: 'Leave it out',
        instead: meant && likely ? `Take ${likely.label}` : undefined,
        answer,
      });
      if (answer !== 'accept' && answer !== 'instead') return;
    }
    const counted: Draft =
      answer === 'instead' && meant
        ? ({ ...draft, massG: meant.massG, entered: undefined } as Draft)
        : first && draft.type === 'weighed'
          ? {
              ...draft,
              doubt: doubts
                .map(({ code }) => code)
                .join(', ')
                .slice(0, 200),
            }
          : draft;
    const plain = withoutGaps(counted);
    drafts.push(plain);
    animal = applyToAnimal(animal, [asEvent(plain, key)], id);
  }

  /** Asks once for all that a row says again. */
  function askTwice({ line, text }: Item, before: number): Answer | undefined {
    const key = `${line}/same-row`;
    const answer = answers[key] === 'instead' ? undefined : answers[key];
    if (!asks.some((ask) => ask.key === key)) {
      asks.push({
        key,
        code: 'same-row',
        line,
        name,
        text,
        messages: [`The same stands on line ${before}. Did it happen twice?`],
        accept: 'It happened twice',
        leave: 'Leave it out',
        answer,
      });
    }
    return answer;
  }
}

/** What is so of a snake from its first day on, whenever it was written down. */
const timeless = (animal: Animal | undefined): Partial<Animal> =>
  animal ? { name: animal.name, sex: animal.sex, hatchedDay: animal.hatchedDay } : {};

/** A button that is no longer there answers nothing. */
function answerTo(
  answer: Answer | undefined,
  isRefused: boolean,
  hasLikely: boolean,
): Answer | undefined {
  if (answer === 'accept' && isRefused) return undefined;
  return answer === 'instead' && !hasLikely ? undefined : answer;
}

const withoutGaps = (draft: Draft): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined)) as Draft;

/** As far as a reducer looks at it, a draft is an event that has no number of its own yet. */
const asEvent = (draft: Draft, key: string): RackEvent =>
  ({ ...draft, id: key, loggedAt: draft.at }) as unknown as RackEvent;

type Step = { readonly ms: number } & (
  { readonly event: RackEvent } | { readonly placed: PlacedItem }
);

function inOrder(
  history: readonly RackEvent[],
  items: readonly PlacedItem[],
  picture: Picture,
): readonly Step[] {
  return [
    ...history
      .filter(({ id }) => picture.ledger.stands(id))
      .map((event) => ({ ms: instantMs(event.at), event })),
    ...items.map((placed) => ({ ms: instantMs(placed.at), placed })),
  ].toSorted((a, b) => a.ms - b.ms);
}

/** The collection as it was for one snake: who lived beside it or was with it then is not known. */
function asOfThen(picture: Picture, animal: Animal, night: Day): Picture {
  const facts = {
    ...picture.facts,
    night,
    visitorOf: () => undefined,
    planned: () => undefined,
    hostOf: () => undefined,
    standing: (each: Animal) => standingOf(each, facts),
  };
  return { ...picture, facts, animal: () => animal, walk: () => [], ownersOf: () => [] };
}
