/** Where a number or a rule comes from. Practice and assumption are allowed sources, but say so. */
export type Source =
  | { readonly kind: 'published'; readonly cite: string }
  | { readonly kind: 'practice'; readonly cite: string }
  | { readonly kind: 'assumption'; readonly cite: string };

const practice = (what: string): Source => ({
  kind: 'practice',
  cite: `Common practice, no source: ${what}`,
});

const assumed = (cite: string): Source => ({ kind: 'assumption', cite });

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
  follicleError: assumed(
    'None published for snakes. After Gilman C.A. & Wolf B.O. 2007, J Exp Biol 210:1859–1867: 25.9 % error in the volume of lizard eggs on ultrasound is about 8 % in diameter.',
  ),
  follicleModel: assumed(
    'A straight line through this season’s scans with a weak prior. No study of growth rates or repeat scans in snakes was found.',
  ),
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
  windowLearning: assumed(
    'Rooms differ as much as the cycles within one, a quarter of which is between females; the usual spread is worth eight cycles. Conjugate normal–inverse-gamma update, Murphy K.P. 2007, Conjugate Bayesian analysis of the Gaussian distribution.',
  ),
  readySize: practice(
    'females breed from about 1,500 g and 2½–3 years, males from 500 g, better 700–800 g, and a year.',
  ),
  malesShared: practice(
    'an adult male has 4–6 females in a season, some 8–12; in his first season 1–2. One that lost mass rests longer.',
  ),
  maleLoss: practice('a male down 8 % is weighed weekly; down 12 % he rests; down 20 %: a vet.'),
  recovery: practice(
    'a female is back to 95–100 % of her mass before the season within 3–6 months, and eats by day 21.',
  ),
  offYear: practice(
    'a season is left out after a slow recovery, eggs left in her, two clutches of slugs, or over twelve years of age. Wild females do not lay every year either. Decided from August to October.',
  ),
  scanCadence: practice(
    'first scan in the last week of October, then about monthly; every 2–3 weeks from 20 mm.',
  ),
  largeFollicle: {
    kind: 'published',
    cite: 'Evaluation of the Follicular Cycle in Ball Pythons (Python regius). J Herpetol Med Surg 2016, 26(3–4):108: follicles count as large from 20 mm.',
  },
  pairFrom: practice('pairing begins at 12–15 mm and ends at ovulation, or at 45 mm.'),
  pairAgain: practice('a female is paired again every 7–10 days while she builds; some, monthly.'),
  preLayShed: practice(
    'the pre-lay shed comes 14–25 days after ovulation; a shed before ovulation is common and misleads.',
  ),
  ovulationLook: practice('ovulation shows for 12–48 hours, so from 35 mm one looks every day.'),
  seasonSigns: practice(
    'cool side, round the bowl, inverted, glow: signs of building, in any order.',
  ),
  nestBox: practice('a damp, closed nest box goes in after the pre-lay shed.'),
  eggLook: practice('eggs come 25–35 days after the pre-lay shed, 40–60 after ovulation.'),
  layLate: practice(
    'no eggs 40 days after the pre-lay shed or 60 after ovulation: book a vet; ten days later: urgent. First check whether it was the pre-lay shed.',
  ),
  incubation: practice('eggs at 31–32 °C; 53–62 days to the first pip there, 60–68 at 30 °C.'),
  eggAlarms: practice(
    'between the eggs, under 30.0 or over 32.8 °C for half an hour is worth a look; 33.5 °C for a quarter of an hour, 35 °C at once or under 27 °C for three hours is an alarm.',
  ),
  eggHumidity: {
    kind: 'published',
    cite: 'Lourdais O., Hoffman T.C.M. & DeNardo D.F. 2007, J Comp Physiol B 177:569–577: unattended eggs of Children’s pythons suffer as humidity falls from 100 to 75 %. Another species.',
  },
  incubatorLooks: practice('a written reading twice a day, by a probe between the eggs.'),
  boxAir: practice('a closed box is opened once a week to day 40, then two or three times.'),
  pipping: practice(
    'looks every day from day 50–55; the rest of a clutch follows its first pip within 24–48 hours, and comes out 24–72 hours after pipping. Opening eggs is disputed: early, it risks yolk and vessels.',
  ),
  incubationModel: assumed(
    'Development goes 1.69 times as fast for 10 °C more, after water pythons at 27.05 and 30.15 °C: Shine R., Madsen T., Elphick M. & Harlow P. 1997, Ecology 78:1713–1721. No curve of ball pythons was found, and nothing is reckoned faster above 32 °C.',
  ),
  eggProblems: practice(
    'dents before day 40 are drought, after day 45 usual; smell with collapse is death.',
  ),
  retainedEggs: {
    kind: 'published',
    cite: 'WikiVet, Lizard and Snake Dystocia: treatment works best within 48 hours of laying that has stopped; it may within a week.',
  },
  relativeClutchMass: {
    kind: 'published',
    cite: 'Ellis T.M. & Chappell M.A. 1987, J Comp Physiol B 157:393–402: clutches of about 32 % of the weight before laying, which is 47 % of the weight after it.',
  },
  citesSource: {
    kind: 'published',
    cite: 'CITES Resolution Conf. 12.3 (Rev.), Permits and certificates: codes for the source of a specimen. Python regius stands in Appendix II.',
  },
  sending: practice(
    'nothing is sent that is unwell, in blue or fed within 3 days; many do not send below 4 °C or above 32 °C at either end.',
  ),
  unwellSale: practice(
    'an animal under treatment, in quarantine or with a grave sign stays. In places selling it then is forbidden, as under Schedule 3 of SI 2018/486 in England.',
  ),
  heldBack: practice('a young one kept back for breeding is not on offer.'),
  reviewCounts: practice(
    'seasons are compared by these shares; young are followed for eight weeks. Half to three quarters of paired females lay, as keepers report it.',
  ),
  wilson: {
    kind: 'published',
    cite: 'Wilson E.B. 1927, J Am Stat Assoc 22:209–212; how well it holds for few cases: Newcombe R.G. 1998, Stat Med 17:857–872.',
  },
  exactTest: {
    kind: 'published',
    cite: 'Exact multinomial test, as the binomial one of Clopper C.J. & Pearson E.S. 1934, Biometrika 26:404–413. That nothing is said under 8 young is common practice.',
  },
  established: practice('three to five unaided meals in a row before a young one is sold.'),
  roomTemperatures: practice(
    'hot spot 31–33 °C; air of the rack 26–28 °C by day, 24–26 °C by night: 1 °C either side.',
  ),
  roomAlarms: practice(
    'a room under 22 °C or over 32 °C for two hours, a rack’s hot spot over 36 °C at any time.',
  ),
  thermometers: practice('household thermometers and loggers are off by up to about 0.5 °C.'),
  strongDrop: practice(
    'air 78–80 °F by day and 76 °F by night out of season, 78 °F and 70 °F in it; hot spot 89–90 °F all year, never lowered.',
  ),
  mildDrop: practice(
    'air 27–29 °C by day; nights of 24–26 °C, 23–25 °C from November to February; hot spot 31–32 °C by day, reduced or off at night.',
  ),
  noDrop: practice(
    'nothing is changed through the year; nights fall by 0–2 °C of themselves. Many report equal results.',
  ),
  degree: {
    kind: 'published',
    cite: 'NIST Special Publication 811 (2008), Appendix B.8: t/°C = (t/°F − 32)/1.8, so 30 °C is 86 °F.',
  },
  gravidMeals: practice(
    'gravid females mostly refuse, and never get a large meal; brooding ones fast.',
  ),
  windowLimits: practice(
    'ovulation to pre-lay shed 8–40 days, to eggs 14–55 more; outside that, one date is wrong.',
  ),
  ounce: {
    kind: 'published',
    cite: 'NIST Special Publication 811 (2008), Appendix B.8: 1 oz = 28.349 523 125 g, 1 lb = 453.592 37 g.',
  },
  fasting: {
    kind: 'published',
    cite: 'McCue M.D. 2007, Zoology 110:318–327: fasting ball pythons lost 18.3 % of their mass in 168 days. As a range, 0.05–0.17 % a day: the two other snakes of that study lost 9.3 and 24.4 %.',
  },
  openRecord: {
    kind: 'published',
    cite: 'Laarhoven B. & Kooijman S.A.L.M. 2010, Add-my-Pet collection, entry Python_regius: dated weights and meals of twelve captive snakes.',
  },
  digestion: {
    kind: 'practice',
    cite: 'Common veterinary advice: no handling for 48 hours after a meal. How large a meal rests longer is the program’s choice, after Ott B.D. & Secor S.M. 2007, J Exp Biol 210:340–356: a meal of 25 % of body mass is at its height after 1.5 days and over by day 6–8.',
  },
  gutContents: {
    kind: 'published',
    cite: 'Ott B.D. & Secor S.M. 2007, J Exp Biol 210:340–356: the work of digestion is over by day 6–8. That droppings follow some days later is common practice.',
  },
  weightModel: assumed(
    'Theil–Sen line, Sen P.K. 1968, J Am Stat Assoc 63:1379–1389. No study of how far weights of one empty snake differ was found.',
  ),
  lossLimits: practice(
    'a loss of 10 % is looked into, of 15–20 % is a vet’s; 5 % in a month deserves a look. No study of these limits was found.',
  ),
  powerFeeding: practice(
    'gaining over 12 % a month from 700 g on is heavy feeding, and makes fat animals.',
  ),
  growthModel: assumed(
    'Growth slows towards an adult weight that is not known beforehand; how soon, how fast and to what weight, by its own weights and what is usual for its sex. No growth curve of the species was found.',
  ),
  growthPriors: practice(
    'about 200–1,000 g at a year and 1,100–3,500 g grown in females, 180–800 g and 550–1,900 g in males; wide on purpose.',
  ),
  preyModel: assumed(
    'Each snake eats or not with its own chance: what its class usually eats, corrected by its own offers (beta prior). Snakes are independent of each other.',
  ),
  appetite: practice(
    'most offers are taken out of season; adult males often fast from November to March, gravid females mostly refuse.',
  ),
  refusals: practice(
    'what a refusal means hangs on stage, season and weight; a count of refusals alone misleads. Temperature is the first cause of not eating.',
  ),
  preyStock: practice(
    'frozen prey keeps 6–12 months at −18 °C, what came first is used first, and nothing is frozen again.',
  ),
  firstFood: practice(
    'the first shed comes 7–14 days after hatching, the first offer 1–7 days after it.',
  ),
  nonFeeders: practice(
    'the clock of a hatchling that does not eat starts at its first shed; keepers differ by weeks.',
  ),
  backups: assumed('A week of records is what most keepers could still write down from memory.'),
  schools: practice(
    'public guides and keepers disagree on size, age, visits and rests; the figures of both sides stand side by side, and nobody has compared them.',
  ),
  carrierChances: {
    kind: 'published',
    cite: 'Bayes over the whole pedigree, exactly: Elston R.C. & Stewart J. 1971, Hum Hered 21:523–542; with loops Cannings C., Thompson E.A. & Skolnick M.H. 1978, Adv Appl Prob 10:26–61.',
  },
  carrierAssumptions: assumed(
    'Parents are as recorded. A bought animal of which nothing is said carries nothing. Eggs that did not hatch, and young that were not looked at, say nothing.',
  ),
  kinship: {
    kind: 'published',
    cite: 'Wright S. 1922, Am Nat 56:330–338; reckoned after Meuwissen T.H.E. & Luo Z. 1992, Genet Sel Evol 24:305–313, and Colleau J.-J. 2002, Genet Sel Evol 34:409–421. What is not known of ancestors can only add to it.',
  },
  household: assumed('A default of this program, open to change.'),
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
