import { roomNight, momentOf, type Clock, type Day, type Moment } from '../core/calendar.ts';
import type { LabelCode } from '../core/code.ts';
import { HOUSE, type AnimalId, type RackId, type RoomId, type TubId } from '../core/ids.ts';
import { labelKey, type SubjectId } from '../events/subjects.ts';
import { protocolWith, type ProtocolChanges } from '../protocol/own-protocol.ts';
import { preySizesWith } from '../protocol/prey-sizes.ts';
import { tasksFor, type RoomFacts, type Rule, type Task } from '../rules/rule.ts';
import type { Experience } from '../season/experience.ts';
import type { Standing } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';
import { ownNumbers, type House } from '../state/house.ts';
import type { Ledger } from '../state/ledger.ts';
import type { Label, Rack, Room, Tub } from '../state/place.ts';
import { createLearning } from './learning.ts';
import { plannedStay } from './planned-stay.ts';
import { inRackOrder, positionText, walkIndex } from './walk.ts';
import { createWhereabouts, whereIs } from './whereabouts.ts';

/** The collection as it stands, what is to be done tonight, and ways to look things up. */
export interface Picture {
  readonly ledger: Ledger;
  readonly facts: RoomFacts;
  /** When it was last brought up to date. */
  readonly clock: Clock;
  house(): House | undefined;
  animal(id: AnimalId): Animal | undefined;
  tub(id: TubId): Tub | undefined;
  rack(id: RackId): Rack | undefined;
  room(id: RoomId): Room | undefined;
  label(code: LabelCode): Label | undefined;
  /** Every animal that has not left. */
  living(): readonly Animal[];
  animals(): readonly Animal[];
  /** Whoever is in a tub now: its owner first, then a visitor. A male on a visit is not at home. */
  inTub(id: TubId): readonly Animal[];
  /** Whose tub it is, whoever is in it now. */
  ownersOf(id: TubId): readonly Animal[];
  whereIs(animal: Animal): TubId | undefined;
  position(id: TubId | undefined): string | undefined;
  /** All tubs in the keeper's walking order. */
  walk(): readonly Tub[];
  tasks(id: AnimalId): readonly Task[];
  /** Asks by these rules from now on. */
  askBy(rules: readonly Rule[]): void;
  /** Where an animal stands tonight; undefined for the young, the unsexed and those that left. */
  standing(animal: Animal): Standing | undefined;
  /** What the keeper's own seasons teach. */
  experience(): Experience;
  /** Takes in what changed, or a new time; only animals touched by it are looked at again. */
  update(touched: Iterable<SubjectId>, clock: Clock): void;
}

const isKind = (prefix: string) => (id: SubjectId) => id.startsWith(prefix);
const isPlace = (id: SubjectId) =>
  id.startsWith('k-') || id.startsWith('t-') || id.startsWith('r-');

/**
 * The picture over a ledger. Reads nothing but the ledger and the clock it is given.
 *
 * `changes` are numbers of the protocol to be tried out: they stand in for what the ledger holds.
 */
export function createPicture(
  ledger: Ledger,
  clock: Clock,
  rules: readonly Rule[],
  changes: ProtocolChanges = {},
): Picture {
  const house = () => ledger.subjects.get(HOUSE) as House | undefined;
  const protocolNow = () => protocolWith(ownNumbers(house()), changes);
  let protocol = protocolNow();
  let preySizes = preySizesWith(house()?.preySizes ?? []);
  const nightOf = (moment: Moment): Day => roomNight(moment, protocol.rolloverHour);
  const get = <Found>(id: SubjectId) => ledger.subjects.get(id) as Found | undefined;
  const animal = (id: AnimalId) => get<Animal>(id);
  const tub = (id: TubId) => get<Tub>(id);

  const whereabouts = createWhereabouts(animal);
  /** Of whoever was asked about since something that bears on it changed. */
  const tasks = new Map<AnimalId, readonly Task[]>();
  const learning = createLearning(() => animalIds(), animal, nightOf);
  let walked: readonly Tub[] | undefined;
  let asOf = clock;
  let askedBy = rules;
  let facts = factsAt(clock);

  function factsAt(time: Clock): RoomFacts {
    return {
      protocol,
      preySizes,
      night: nightOf(momentOf(time)),
      nowMs: time.ms,
      offsetMin: time.offsetMin,
      nightOf,
      nameOf: (id) => animal(id)?.name || 'another snake',
      visitorOf: (each) => whereabouts.guestsOf(each.id)[0],
      planned: (each) =>
        plannedStay(each.id, house()?.rotation?.plan, nightOf(momentOf(time)), animal),
      hostOf: (male) => (male.visit ? animal(male.visit.with) : undefined),
      standing: (each) => learning.standing(each, facts),
      scanErrors: () => learning.experience(protocol).scanErrors,
    };
  }

  function position(id: TubId | undefined): string | undefined {
    const found = id === undefined ? undefined : tub(id);
    const rack = found?.rack === undefined ? undefined : get<Rack>(found.rack);
    return found && rack && !found.removed ? positionText(found, rack) : undefined;
  }

  /** A start waits only for those it shows: a capture screen for one, and tonight by its own rules. */
  function tasksOf(id: AnimalId): readonly Task[] {
    let asked = tasks.get(id);
    if (!asked) {
      const each = animal(id);
      asked = each ? tasksFor(each, facts, askedBy) : [];
      tasks.set(id, asked);
    }
    return asked;
  }

  function askBy(asked: readonly Rule[]): void {
    if (asked === askedBy) return;
    askedBy = asked;
    tasks.clear();
  }

  // In order of id, so that nothing shown hangs on the order in which records arrived.
  const animalIds = () => [...ledger.subjects.keys()].filter(isKind('a-')).toSorted() as AnimalId[];

  function update(touched: Iterable<SubjectId>, time: Clock): void {
    const before = facts;
    const changed = [...touched];
    const isNewProtocol = changed.includes(HOUSE);
    if (isNewProtocol) {
      protocol = protocolNow();
      preySizes = preySizesWith(house()?.preySizes ?? []);
    }
    asOf = time;
    facts = factsAt(time);
    if (changed.some(isPlace)) walked = undefined;
    const ids = changed.filter(isKind('a-')) as AnimalId[];
    const hosts = ids.map((id) => whereabouts.hostOf(id));
    for (const id of ids) whereabouts.place(id);
    // A new hour may open a task anywhere; within it only what was touched can change.
    const isNewHour = Math.floor(before.nowMs / 3_600_000) !== Math.floor(time.ms / 3_600_000);
    const isNewNight = before.night !== facts.night; // Noon is not a whole hour of UTC everywhere.
    const isNewLesson = learning.hasChanged(ids, facts);
    if (isNewHour || isNewNight || isNewProtocol || isNewLesson) tasks.clear();
    else for (const id of withPartners(ids, hosts)) tasks.delete(id);
  }

  /** A pair's sentences name each other, and so do those of a pair that has just parted. */
  function withPartners(
    ids: readonly AnimalId[],
    hosts: readonly (AnimalId | undefined)[],
  ): Set<AnimalId> {
    const partners = ids.flatMap((id) => [whereabouts.hostOf(id), ...whereabouts.guestsOf(id)]);
    return new Set([...ids, ...hosts, ...partners].filter((id) => id !== undefined));
  }

  const known = (ids: readonly AnimalId[]): readonly Animal[] =>
    ids.map(animal).filter((each) => each !== undefined);

  for (const id of animalIds()) whereabouts.place(id);

  return {
    ledger,
    get facts() {
      return facts;
    },
    get clock() {
      return asOf;
    },
    house,
    animal,
    tub,
    rack: (id) => get<Rack>(id),
    room: (id) => get<Room>(id),
    label: (code) => get<Label>(labelKey(code)),
    animals: () => known(animalIds()),
    living: () => known(animalIds()).filter(({ gone }) => !gone),
    inTub: (id) =>
      known(whereabouts.inTub(id)).toSorted((a, b) => Number(a.tub !== id) - Number(b.tub !== id)),
    ownersOf: (id) => known(whereabouts.ownersOf(id)),
    whereIs,
    position,
    walk: () => (walked ??= walkAll()),
    tasks: tasksOf,
    askBy,
    standing: (each) => learning.standing(each, facts),
    experience: () => learning.experience(protocol),
    update,
  };

  function walkAll(): readonly Tub[] {
    const standing = [...ledger.subjects.values()].flatMap((subject) => {
      if (!('kind' in subject) || subject.kind !== 'tub' || subject.removed) return [];
      const rack = subject.rack === undefined ? undefined : get<Rack>(subject.rack);
      if (!rack || rack.removed) return [];
      const room = rack.room === undefined ? undefined : get<Room>(rack.room);
      return [{ tub: subject, rack, room }];
    });
    return standing
      .toSorted(
        (a, b) =>
          inRackOrder(a, b) ||
          walkIndex(a.tub, a.rack) - walkIndex(b.tub, b.rack) ||
          (a.tub.id < b.tub.id ? -1 : 1),
      )
      .map((each) => each.tub);
  }
}
