// Closed lists that both a record's schema and the buttons that write it are made of.

/** Where on the body a health sign was seen. */
export const healthSystems = [
  'breathing',
  'mouth',
  'skin',
  'mites',
  'eyes',
  'vent',
  'nerves',
  'wound',
  'swelling',
  'other',
] as const;

/** Signs by which a female shows that follicles grow. Common practice, no source. */
export const buildingSigns = [
  'cool side',
  'round the bowl',
  'inverted',
  'swelling',
  'glow',
  'off food',
  'looking for a nest',
] as const;

/** What can be wrong with an egg, or look so. Common practice, no source. */
export const eggTroubles = [
  'dented',
  'weeping',
  'thin shell',
  'mould',
  'collapsed',
  'smell',
  'dead at full term',
] as const;

/** How an animal goes to its buyer. */
export const handOvers = ['collected', 'brought', 'sent'] as const;

/** Codes for where an animal comes from, of those that can be so for this species. Source: citesSource. */
export const citesSources = ['C', 'F', 'R', 'W', 'O', 'I', 'U'] as const;

/** What is looked for on a hatchling as it comes out. */
export const hatchDefects = [
  'kink',
  'eye missing or small',
  'belly not closed',
  'yolk left',
  'wobble',
  'other',
] as const;
