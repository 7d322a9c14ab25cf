import type { Sex } from '../src/domain/events/life.ts';
import { nameOf, stagedTraits, traits } from './names.ts';
import type { Chance } from './random.ts';
import { closingOf, type Closing, type Role } from './staging.ts';

/** One animal of the story, before it is born or bought. Nights count from the first one. */
export interface Casting {
  readonly role: Role;
  readonly index: number;
  readonly name: string;
  readonly sex: Sex;
  readonly traits: string;
  readonly hatchedOn: number;
  /** 0: there when record keeping starts. */
  readonly arrivesOn: number;
  readonly origin: 'own' | 'bought' | 'gift';
  /** What it would weigh when grown and in good condition. */
  readonly adultG: number;
  /** In winter, a male that stops eating altogether. */
  readonly fastsInWinter: boolean;
  readonly leaves?: { readonly night: number; readonly how: 'sold' | 'died'; readonly why: string };
  readonly closing: Closing;
}

export interface CastSizes {
  readonly animals: number;
  /** How many nights the history has. */
  readonly total: number;
  /** The month of the last night, 1 to 12. */
  readonly lastMonth: number;
}

/** How many play each part, of which about a third are adult females [common practice, no source]. */
export function partSizes(animals: number): Record<Exclude<Role, 'passing'>, number> {
  const female = Math.round(animals * 0.348);
  const male = Math.round(animals * 0.13);
  const grower = Math.round(animals * 0.261);
  const quarantined = Math.min(2, animals - female - male - grower);
  return {
    female,
    male,
    grower,
    hatchling: animals - female - male - grower - quarantined,
    quarantined,
  };
}

const YEAR = 365;

export function castOf({ animals, total, lastMonth }: CastSizes, chance: Chance): Casting[] {
  const cast: Casting[] = [];
  const sizes = partSizes(animals);

  function add(
    role: Role,
    index: number,
    sex: Sex,
    hatchedOn: number,
    rest: Partial<Casting> = {},
  ): void {
    const middleG = sex === 'male' ? 880 : 2080;
    const spreadG = sex === 'male' ? 90 : 230;
    cast.push({
      role,
      index,
      sex,
      name: nameOf(cast.length),
      traits: stagedTraits(role, index, chance.pick(traits)),
      hatchedOn,
      arrivesOn: Math.max(0, hatchedOn + 1),
      origin: hatchedOn < 0 && chance.happens(0.5) ? 'bought' : 'own',
      adultG: middleG + chance.between(-spreadG, spreadG),
      fastsInWinter: sex === 'male' && chance.happens(0.6),
      closing: closingOf(role, index, lastMonth),
      ...rest,
    });
  }

  const young = (): Sex => (chance.happens(0.5) ? 'male' : 'female');

  for (let i = 0; i < sizes.female; i += 1) {
    // One was bought later, and has served her quarantine within the history.
    const arrivesOn = i === 15 ? Math.max(0, total - 640) : 0;
    const bought = i === 15 ? { arrivesOn, origin: 'bought' as const } : {};
    add('female', i, 'female', -chance.whole(1000, 3600), bought);
  }
  for (let i = 0; i < sizes.male; i += 1) add('male', i, 'male', -chance.whole(800, 3200));
  for (let i = 0; i < sizes.grower; i += 1) {
    add('grower', i, young(), total - chance.whole(385, 600));
  }
  // 75 to 165 nights old: last summer's in autumn, else from an early or a late clutch.
  for (let i = 0; i < sizes.hatchling; i += 1) {
    add('hatchling', i, young(), total - chance.whole(75, 165));
  }
  for (let i = 0; i < sizes.quarantined; i += 1) {
    const arrivesOn = Math.max(0, total - (i === 0 ? 58 : 26));
    add('quarantined', i, i === 0 ? 'female' : 'male', arrivesOn - chance.whole(420, 700), {
      arrivesOn,
      origin: 'bought',
    });
  }
  // Two that are gone on the last night.
  add('passing', 0, 'male', -24 * YEAR, {
    origin: 'gift',
    leaves: {
      night: total - 250,
      how: 'died',
      why: 'Found dead in the morning, curled in the hide. Twenty-five, give or take.',
    },
  });
  add('passing', 1, 'male', total - 640, {
    leaves: { night: total - 118, how: 'sold', why: 'Eats anything. To a teacher, with papers.' },
  });
  // Long histories raise and sell a generation a year.
  for (let back = YEAR; total - 600 - back > 0; back += YEAR) {
    for (let i = 0; i < sizes.grower; i += 1) {
      const hatchedOn = total - chance.whole(385, 600) - back;
      const night = hatchedOn + chance.whole(380, 440);
      add('passing', i + 2, young(), hatchedOn, {
        leaves: { night, how: 'sold', why: 'Feeding well.' },
      });
    }
  }
  return cast;
}
