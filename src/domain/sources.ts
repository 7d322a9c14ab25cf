/** Where a number or a rule comes from. Practice and assumption are allowed sources, but say so. */
export type Source =
  | { readonly kind: 'published'; readonly cite: string }
  | { readonly kind: 'practice'; readonly cite: string }
  | { readonly kind: 'assumption'; readonly cite: string };

const practice = (what: string): Source => ({
  kind: 'practice',
  cite: `Common practice, no source: ${what}`,
});

/** The bibliography. Rules, protocol values and tests name entries by key. */
export const sources = {
  feedingRhythm: practice(
    'meals every 5–7 days for hatchlings, 7–10 for growers, 10–21 for adults.',
  ),
  feedingUp: practice('females are fed up from August into the season, males the other way round.'),
  mealShare: practice(
    'a meal of 10–15 % of body mass for a hatchling, down to 3–6 % for a big adult.',
  ),
  preySizes: practice('rat and mouse sizes by name; suppliers differ, so weigh a few.'),
  leftOvernight: practice('a meal left in the tub is taken out and binned within 12 hours.'),
  regurgitation: {
    kind: 'practice',
    cite: 'Common practice, after Ross R.A. & Marzec G. 1990, The Reproductive Husbandry of Pythons and Boas, as quoted in public texts: rest 10–14 days, then half a meal.',
  },
  inBlue: practice('most do not eat in blue; the shed follows 6–14 days after the eyes cloud.'),
  maleStay: practice('a male stays 1–3 days with a female; over 5 days is too long for him.'),
  weighing: practice('adults monthly, hatchlings and males in season every two weeks.'),
  newArrival: practice('a new arrival is left alone for 5–7 days before its first meal.'),
  weightSlips: practice('the usual slips at a scale: a digit, a unit, the tub, the wrong animal.'),
  growthBounds: practice('more than +20 % or −12 % in a month is unusual in an adult.'),
  shedSpacing: practice('sheds less than 14 days apart are unusual.'),
  scanSizes: practice('follicles measure 5–50 mm; a number under 6 is often centimetres.'),
  follicleError: {
    kind: 'assumption',
    cite: 'None published for snakes. After Gilman C.A. & Wolf B.O. 2007, J Exp Biol 210:1859–1867: 25.9 % error in the volume of lizard eggs on ultrasound is about 8 % in diameter.',
  },
  follicleModel: {
    kind: 'assumption',
    cite: 'A straight line through this season’s scans with a weak prior. No study of growth rates or repeat scans in snakes was found.',
  },
  feltSizes: practice(
    'small bumps about 12 mm, round lumps 20, large lumps 30, egg-like 40 or more. What people compare them with is physically larger.',
  ),
  follicleStages: practice(
    'follicles rest at 4–8 mm; from 10–15 mm she is building; 20 mm to ovulation takes 25–80 days.',
  ),
  resorbing: practice(
    'two falling sizes at least 14 days apart before it is called resorbing. In Journal of Herpetological Medicine and Surgery 26(3–4):108 (2016), one of four females resorbed all.',
  ),
  pairing: practice('no pairing within 48 hours of a meal, in blue, in quarantine or on a hold.'),
  vetClock: practice('breathing trouble, prolapse or stalled laying is for a reptile vet, soon.'),
  seasonLinks: practice(
    'how long each step of a season takes, as keepers report it. Studies give single cases only.',
  ),
  windowLearning: {
    kind: 'assumption',
    cite: 'Rooms differ as much as the cycles within one, and the usual spread is worth eight cycles. Conjugate normal–inverse-gamma update, Murphy K.P. 2007, Conjugate Bayesian analysis of the Gaussian distribution.',
  },
  ounce: {
    kind: 'published',
    cite: 'NIST Special Publication 811 (2008), Appendix B.8: 1 oz = 28.349 523 125 g, 1 lb = 453.592 37 g.',
  },
  fasting: {
    kind: 'published',
    cite: 'McCue M.D. 2007: fasting ball pythons lost 18.3 % of their mass in 168 days.',
  },
  backups: {
    kind: 'assumption',
    cite: 'A week of records is what most keepers could still write down from memory.',
  },
  household: {
    kind: 'assumption',
    cite: 'A default of this program, open to change.',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
