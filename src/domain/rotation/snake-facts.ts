import { daysBetween, type Day, type Moment } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import { dayAndMonthWords } from '../core/day-words.ts';
import { largeMealNights } from '../rules/digesting.ts';
import { holdUntil, underTreatment } from '../rules/feeding-block.ts';
import { dueNight } from '../rules/feeding-due.ts';
import { shutWindow } from '../season/pairing-window.ts';
import type { Animal } from '../state/animal.ts';
import { femalesHad, lossShare, maleStopped, mostFemales, restNights } from './male-limits.ts';
import type { Night, PlanFemale, PlanMale, PlanSnake } from './plan-problem.ts';
import { staysNow } from './this-season.ts';

/** Visits so far back still count as lately, in days. */
const LATELY_DAYS = 28;
/** From here a window is near its end, in millimetres below the size at which pairing stops. */
const VERY_SOON_MM = 10;

/** What holds for a snake of either sex; `night` 0 is tonight. */
function snakeFacts(animal: Animal, picture: Picture): PlanSnake {
  const { facts } = picture;
  const toNight = (day: Day): Night => daysBetween(facts.night, day);
  const of = (moment: Moment): Night => toNight(facts.nightOf(moment));
  const ate = animal.offers.findLast(({ outcome }) => outcome === 'ate' || outcome === 'partly');
  const since = animal.opaqueAt && of(animal.opaqueAt);
  const clear = since === undefined ? undefined : since + facts.protocol.blueHoldDays;
  return {
    id: animal.id,
    // A large meal counts as so much later as it rests longer.
    ate: ate && of(ate.at) + largeMealNights(animal, facts.protocol.mealToPairingDays, facts),
    mealDue: mealDue(animal, picture),
    clearFrom: clear !== undefined && clear > 0 ? clear : undefined,
    apart: apart(animal, picture),
  };
}

/** Nothing is expected where no meal was ever written down, or one still lies in the tub. */
const mealDue = (animal: Animal, { facts }: Picture): Night | undefined =>
  animal.offers.length === 0 || animal.offers.at(-1)?.outcome === 'left'
    ? undefined
    : Math.max(0, daysBetween(facts.night, dueNight(animal, facts)));

function apart(animal: Animal, { facts }: Picture): string | undefined {
  if (animal.quarantine) return 'In quarantine.';
  if (animal.graveSign) return `A grave sign is on record: ${animal.graveSign.system}.`;
  const until = holdUntil(animal, facts);
  if (until !== undefined) return `Brought up a meal: rest until ${dayAndMonthWords(until)}.`;
  const treatment = underTreatment(animal, facts.night);
  return treatment && `${treatment.replace('under', 'Under')}.`;
}

export function maleFacts(male: Animal, picture: Picture): PlanMale {
  const { facts } = picture;
  const of = (moment: Moment): Night => daysBetween(facts.night, facts.nightOf(moment));
  const stays = staysNow(male, picture);
  const home = stays.at(-1);
  const loss = Math.max(0, lossShare(male, picture) ?? 0);
  return {
    ...snakeFacts(male, picture),
    cameHome: male.visit || !home ? undefined : of(home.until ?? home.since),
    restNights: restNights(male, picture),
    stopped: maleStopped(male, picture),
    lossOfStop: Math.min(1, loss / facts.protocol.maleLossStopShare),
    lateVisits: stays.filter(({ since }) => of(since) > -LATELY_DAYS).length,
    had: femalesHad(male, picture),
    mostFemales: mostFemales(male, picture),
  };
}

export function femaleFacts(female: Animal, picture: Picture): PlanFemale {
  const { facts } = picture;
  const of = (moment: Moment): Night => daysBetween(facts.night, facts.nightOf(moment));
  const standing = picture.standing(female);
  const scan = standing?.now?.scan;
  const last = staysNow(female, picture).at(-1);
  const ended = last && of(last.until ?? last.since);
  const closed = whyClosed(female, picture);
  const { pairAgainDays, pairStopMm, largeFromMm } = facts.protocol;
  // She waits since her last visit could be followed, or since she was found to be building.
  const since = standing?.since === undefined ? 0 : daysBetween(facts.night, standing.since);
  const due = ended === undefined ? since : ended + pairAgainDays;
  const mm = scan?.mm ?? 0;
  return {
    ...snakeFacts(female, picture),
    window: closed === undefined ? { from: 0, before: Infinity } : undefined,
    closed,
    visitEnded: facts.visitorOf(female) === undefined ? ended : undefined,
    overdueNights: Math.max(0, -due),
    haste: mm >= pairStopMm - VERY_SOON_MM ? 3 : mm >= largeFromMm ? 2 : 1,
  };
}

/** Why no male may go to her now, in a sentence; undefined while she is in her window. */
function whyClosed(female: Animal, picture: Picture): string | undefined {
  const { pairStopMm, pairFromMm } = picture.facts.protocol;
  const standing = picture.standing(female);
  const shut = shutWindow(standing, pairStopMm);
  if (!shut) return undefined;
  if (shut.by === 'size') return `Largest follicle ${shut.mm} mm: you stop at ${pairStopMm} mm.`;
  const because = standing?.because.join(' ') ?? '';
  return `${stageWords[shut.stage ?? 'unknown'] ?? 'She is not building.'} ${because} You pair from ${pairFromMm} mm.`;
}

const stageWords: Readonly<Record<string, string>> = {
  growing: 'She is still growing.',
  resting: 'She is not building yet.',
  resorbing: 'She may be resorbing.',
  ovulated: 'She has ovulated.',
  'pre-lay shed': 'She has shed before laying.',
  laid: 'She has laid.',
  recovering: 'She is recovering.',
};
