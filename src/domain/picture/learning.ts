import type { AnimalId } from '../core/ids.ts';
import type { Protocol } from '../protocol/values.ts';
import {
  experienceOf,
  lessonOf,
  noLesson,
  type Experience,
  type Lesson,
} from '../season/experience.ts';
import { standingOf } from '../season/standing-of.ts';
import type { NightOf } from '../season/night-of.ts';
import type { StageFacts, Standing } from '../season/standing.ts';
import type { Animal } from '../state/animal.ts';

/** What is worked out once from all seasons, and kept until a record or the night changes it. */
export interface Learning {
  experience(protocol: Protocol): Experience;
  standing(animal: Animal, facts: StageFacts): Standing | undefined;
  /** Whether these animals now teach something else than they did: then all are to be looked at. */
  hasChanged(ids: readonly AnimalId[], facts: StageFacts): boolean;
}

/** Learns nothing until it is asked: a start must not wait for it. */
export function createLearning(
  allIds: () => readonly AnimalId[],
  animalOf: (id: AnimalId) => Animal | undefined,
  nightOf: NightOf,
): Learning {
  const lessons = new Map<AnimalId, { of: Animal | undefined; lesson: Lesson; text: string }>();
  let learntUnder: Protocol | undefined;
  let experience: Experience | undefined;
  let standings = new WeakMap<Animal, Standing | undefined>();
  let asOf: Pick<StageFacts, 'night' | 'protocol'> | undefined;

  /** True where the lesson is another one than before. */
  function learn(id: AnimalId, protocol: Protocol): boolean {
    const animal = animalOf(id);
    const before = lessons.get(id);
    if (before && before.of === animal) return false;
    const lesson = animal ? lessonOf(animal, protocol, nightOf) : noLesson;
    const text = JSON.stringify(lesson);
    lessons.set(id, { of: animal, lesson, text });
    return before?.text !== text;
  }

  function experienceBy(protocol: Protocol): Experience {
    if (experience && learntUnder === protocol) return experience;
    if (learntUnder !== protocol) lessons.clear();
    learntUnder = protocol;
    for (const id of allIds()) learn(id, protocol);
    const known = [...lessons].toSorted(([a], [b]) => (a < b ? -1 : 1));
    experience = experienceOf(
      known.map(([, { lesson }]) => lesson),
      protocol,
    );
    return experience;
  }

  function forgetStandings({ night, protocol }: StageFacts): void {
    standings = new WeakMap();
    asOf = { night, protocol };
  }

  function standing(animal: Animal, facts: StageFacts): Standing | undefined {
    if (asOf?.night !== facts.night || asOf.protocol !== facts.protocol) forgetStandings(facts);
    if (!standings.has(animal)) standings.set(animal, standingOf(animal, facts));
    return standings.get(animal);
  }

  return {
    experience: experienceBy,
    standing,

    hasChanged(ids, facts) {
      if (!experience || learntUnder !== facts.protocol) return false; // Nothing rests on it.
      // Each is learnt, whatever the one before it said.
      if (ids.filter((id) => learn(id, facts.protocol)).length === 0) return false;
      experience = undefined;
      forgetStandings(facts);
      return true;
    },
  };
}
