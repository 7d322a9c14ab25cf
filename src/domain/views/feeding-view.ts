import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId, RackId } from '../core/ids.ts';
import type { Prey } from '../events/feeding.ts';
import type { Picture } from '../picture/picture.ts';
import { appetiteInBlue, appetiteOf } from '../prey/appetite-of.ts';
import { chanceEats } from '../prey/acceptance.ts';
import { freezerOf, inHand, piecesIn, thawedOn, type ThawedCount } from '../prey/freezer-stock.ts';
import { sizeKey, thawList, type DueMeal } from '../prey/thaw.ts';
import { showMeal } from '../protocol/planned-meal.ts';
import { feedingBlock } from '../rules/feeding-block.ts';
import { dueNight, mealOf, planOf } from '../rules/feeding-due.ts';
import type { Animal } from '../state/animal.ts';
import { inWalkingOrder } from './tonight-view.ts';

/** One snake that is due tonight. */
export interface FeedingLine {
  readonly animal: AnimalId;
  readonly name: string;
  readonly position: string;
  readonly rack?: RackId | undefined;
  readonly rackName: string;
  readonly words: string;
  readonly meal: Prey;
  /** Chance that it eats. */
  readonly chance: number;
  readonly blocked?: string | undefined;
}

/** One size to take out of the freezer. */
export interface ThawRow {
  readonly kind: Prey['kind'];
  readonly size: string;
  /** Pieces one meal each for all that are due, to thaw, and expected to be eaten. */
  readonly offered: number;
  readonly thaw: number;
  readonly expected: number;
  readonly spare: number;
  readonly because: readonly string[];
  /** In the freezer by the records; undefined where that size was never written down. */
  readonly inFreezer?: number | undefined;
  readonly thawed: number;
  readonly given: number;
  /** Refused in quarantine: for the bin. */
  readonly spoilt: number;
  readonly binned: number;
  /** Thawed, and in no snake and no tub; negative where more was fed than thawed. */
  readonly inHand: number;
  /** Who may take what is left, the nearest to its own night first. */
  readonly next: readonly MaybeLine[];
}

export interface MaybeLine {
  readonly animal: AnimalId;
  readonly name: string;
  readonly position: string;
  readonly words: string;
  /** Days until it is due. */
  readonly inDays: number;
}

export interface FeedingView {
  readonly night: Day;
  readonly due: readonly FeedingLine[];
  /** Due, and not to be fed tonight. */
  readonly blocked: readonly FeedingLine[];
  /** Left overnight, to be settled. */
  readonly left: readonly {
    readonly animal: AnimalId;
    readonly name: string;
    readonly position: string;
    readonly words: string;
  }[];
  readonly thaw: readonly ThawRow[];
  /** Thawed for the night before and unaccounted for: for the bin. */
  readonly lastNight: readonly {
    readonly kind: Prey['kind'];
    readonly size: string;
    readonly pieces: number;
  }[];
  readonly leftHours: number;
  /** Whether anything of the freezer is on record. */
  readonly isKept: boolean;
}

const MAYBE = 6;

/** Tonight's feeding: who is due in rack order, who is not and why, and what to thaw for it. */
export function feedingView(picture: Picture): FeedingView {
  const { facts, ledger } = picture;
  const living = inWalkingOrder(picture.living(), picture);
  const freezer = freezerOf(ledger);
  const lines = living.flatMap((animal) => dueLine(animal, picture));
  const due = lines.filter(({ blocked }) => blocked === undefined);
  const quarantined = new Set(living.flatMap(({ id, quarantine }) => (quarantine ? [id] : [])));
  const counts = thawedOn(facts.night, freezer, living, facts);
  const meals = due.map(({ animal, meal }): DueMeal => {
    const each = picture.animal(animal);
    const acceptance = each ? appetiteOf(each, facts) : appetiteInBlue(facts);
    return { meal, acceptance, keepsOwn: quarantined.has(animal) };
  });
  const before = thawedOn(addDays(facts.night, -1), freezer, living, facts);
  return {
    night: facts.night,
    due,
    blocked: lines.filter(({ blocked }) => blocked !== undefined),
    left: living.flatMap((animal) =>
      picture
        .tasks(animal.id)
        .filter(({ act }) => act === 'settle')
        .map(({ asks }) => ({ ...whoOf(animal, picture), words: asks })),
    ),
    thaw: thawRows(meals, counts, living, picture),
    lastNight: before.flatMap((count) =>
      count.thawed > 0 && inHand(count) > 0
        ? [{ kind: count.kind, size: count.size, pieces: inHand(count) }]
        : [],
    ),
    leftHours: facts.protocol.leftHours,
    isKept: freezer !== undefined,
  };
}

const whoOf = (animal: Animal, picture: Picture) => ({
  animal: animal.id,
  name: animal.name || 'Unnamed',
  position: picture.position(picture.whereIs(animal)) ?? '–',
});

function dueLine(animal: Animal, picture: Picture): FeedingLine[] {
  const task = picture.tasks(animal.id).find(({ act }) => act === 'feed');
  if (!task?.meal) return [];
  const tub = picture.whereIs(animal);
  const rackId = tub === undefined ? undefined : picture.tub(tub)?.rack;
  const rack = rackId === undefined ? undefined : picture.rack(rackId);
  return [
    {
      ...whoOf(animal, picture),
      rack: rack?.id,
      rackName: rack?.name ?? 'No tub',
      words: showMeal(task.meal),
      meal: task.meal,
      chance: chanceEats(appetiteOf(animal, picture.facts)),
      blocked: task.blocked,
    },
  ];
}

/** What is asked for and what is there already, size by size, heaviest first. */
function thawRows(
  meals: readonly DueMeal[],
  counts: readonly ThawedCount[],
  living: readonly Animal[],
  picture: Picture,
): readonly ThawRow[] {
  const { facts, ledger } = picture;
  const freezer = freezerOf(ledger);
  const lines = thawList(
    meals.filter(({ meal }) => isThawed(meal)),
    facts.protocol,
  );
  const asked = new Set(lines.map(sizeKey));
  const rest = counts
    .filter((count) => !asked.has(sizeKey(count)) && (count.thawed > 0 || count.given > 0))
    .map(({ kind, size }) => {
      return { kind, size, thaw: 0, offered: 0, expected: 0, spare: 0, because: [] };
    });
  return [...lines, ...rest].map((line) => {
    const { kind, size, offered, thaw, expected, spare, because } = line;
    const key = sizeKey(line);
    const count = counts.find((each) => sizeKey(each) === key);
    const drawer = freezer?.drawers[key];
    const left = count ? inHand(count) : 0;
    const free = count && count.thawed > 0 ? left - count.spoilt : 0;
    return {
      kind,
      size,
      offered,
      thaw,
      expected,
      spare,
      because,
      inFreezer: drawer && piecesIn(drawer),
      thawed: count?.thawed ?? 0,
      given: count?.given ?? 0,
      spoilt: count?.spoilt ?? 0,
      binned: count?.binned ?? 0,
      inHand: left,
      next: free > 0 && offered === 0 ? maybes(key, living, picture) : [],
    };
  });
}

const isThawed = (meal: DueMeal['meal']): boolean => !('state' in meal) || meal.state === 'thawed';

/** Not due tonight, of that size, past half of its days since the last offer, and nothing against it. */
function maybes(key: string, living: readonly Animal[], picture: Picture): readonly MaybeLine[] {
  const { facts } = picture;
  return living
    .flatMap((animal) => {
      const inDays = daysBetween(facts.night, dueNight(animal, facts));
      if (inDays <= 0 || inDays > planOf(animal, facts).everyDays / 2) return [];
      const meal = mealOf(animal, facts);
      if (sizeKey(meal) !== key || feedingBlock(animal, facts) !== undefined) return [];
      if (animal.quarantine) return [];
      return [{ ...whoOf(animal, picture), words: showMeal(meal), inDays }];
    })
    .toSorted((a, b) => a.inDays - b.inDays)
    .slice(0, MAYBE);
}
