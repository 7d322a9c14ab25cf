import type { UnclearName } from '../catalogue.ts';

export const unclear: readonly UnclearName[] = [
  {
    names: ['Axanthic'],
    message: 'Axanthic lines are different genes: name the line, such as Axanthic VPI or TSK.',
  },
  {
    names: ['BEL', 'Blue-eyed leucistic', 'Blue-eyed lucy'],
    message: 'Several pairs are white with blue eyes: name both genes, such as Lesser/Mojave.',
  },
  {
    names: ['Leucistic', 'Lucy'],
    message: 'White with blue or with black eyes, and from which genes?',
  },
];
