import type { Source } from '../../sources.ts';

const published = (cite: string): Source => ({ kind: 'published', cite });

/** Where the statements on colours and patterns come from. */
export const geneSources = {
  brown: published(
    'Brown A.R. et al. 2022, PLoS ONE 17(10):e0276376: Albino is TYR, Lavender Albino OCA2, Ultramel TYRP1.',
  ),
  dao: published(
    'Dao U.M. et al. 2023, G3 13(7): variants of endothelin signalling give stripes and loss of colour. The gene is printed as EDNRB1 and as EDNRB2; which trade name carries which variant is not known to us.',
  ),
  tfec: published('Garcia-Elfring A. et al. 2023, Curr Biol 33(4):755–763: Piebald is tfec.'),
  mlph: published(
    'Lederer I. et al. 2023 (OMIA:002758-51751): Ghost, Hypo, Orange Ghost are a 5-base deletion in MLPH; all 50 had two copies, and were healthy.',
  ),
  mc1r: published(
    'Garcia-Elfring A. et al. 2025, Pigment Cell Melanoma Res 38:e13215: Clown is MC1R.',
  ),
  gch2: published(
    'Garcia-Elfring A. et al. 2024, bioRxiv 2024.05.22.595308 (OMIA:002937-51751): one lineage of Axanthic is gch2; which trade line was not stated.',
  ),
  mallery: published(
    'Mallery C.S. & Carrillo M.M. 2016, Phyllomedusa 15(1):29–42: Coral Glow is sex-linked with recombination, XX females and XY males.',
  ),
  gamble: published(
    'Gamble T. et al. 2017, Curr Biol 27(14):2148–2153: pythons are XX and XY, shown in a sister species.',
  ),
  rose: published(
    'Rose M.P. & Williams D.L. 2014, J Exot Pet Med 23(3):234–239: wobble of Spider, a survey and welfare assessment.',
  ),
  starck: published(
    'Starck J.M. et al. 2022, PLoS ONE 17(8):e0262788: malformed inner ears in Spider; every one examined wobbled, too few for statistics.',
  ),
  booth: published(
    'Booth W. et al. 2014, Biol J Linn Soc 112:461–468: young without a sire in P. regius, by terminal fusion.',
  ),
  trade: {
    kind: 'practice',
    cite: 'Common practice, no source: what breeders agree on from their own crosses.',
  },
  someSay: {
    kind: 'practice',
    cite: 'Common practice, no source: said by some breeders, not agreed or not verified.',
  },
  crossover: {
    kind: 'assumption',
    cite: 'One in ten. Breeders quote 5–10 % of the unexpected sex; the published rate could not be read.',
  },
  copies: {
    kind: 'assumption',
    cite: 'A snake of which nobody says otherwise carries one copy of a trait that shows in one.',
  },
} as const satisfies Record<string, Source>;
