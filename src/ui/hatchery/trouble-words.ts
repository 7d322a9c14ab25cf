import { eggTroubles } from '../../domain/core/trade-words.ts';

export type EggTrouble = (typeof eggTroubles)[number];

interface Meaning {
  readonly means: string;
  /** Whether it is worth asking someone at once. */
  readonly ask?: true;
}

/** Before this day a dent is drought, after the second it is usual. Common practice, no source. */
const [DENT_DRY_UNTIL, DENT_USUAL_FROM] = [40, 45];

/** What a trouble means at a day of incubation. None of it is a treatment. Source: eggProblems. */
export function meaningOf(trouble: EggTrouble, day: number): Meaning {
  switch (trouble) {
    case 'dented':
      return day >= DENT_USUAL_FROM
        ? { means: 'So late, eggs dent as they use up their water: usual.' }
        : day < DENT_DRY_UNTIL
          ? { means: 'So early, it is too dry round them. Look again in a day or two.' }
          : { means: 'Between too dry and usual: look at the air, and again tomorrow.' };
    case 'weeping':
      return { means: 'A crack, germs, or water from the lid. Look where it comes from.' };
    case 'thin shell':
      return { means: 'Thin windows lose more water. Keep the air damp and watch them.' };
    case 'mould':
      return {
        means: 'A spot on a firm egg is often of the shell alone. Watch it, and its neighbours.',
      };
    case 'collapsed':
      return {
        means: 'Deeply fallen in long before its time: it may be dead. If it smells, it is.',
      };
    case 'smell':
      return { means: 'With collapse, it is dead. An egg that is firm is kept.' };
    case 'dead at full term':
      return {
        means: 'Warmth, damp or genes. Keep a photo and what you see; several: ask a reptile vet.',
        ask: true,
      };
  }
}
