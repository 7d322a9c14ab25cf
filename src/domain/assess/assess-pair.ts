import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { digesting } from '../rules/digesting.ts';
import { feedingBlock } from '../rules/feeding-block.ts';
import { againstPairing } from '../rules/pairing-block.ts';
import type { Animal } from '../state/animal.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

type Introduced = Extract<Draft, { type: 'introduced' }>;

const refusal = (code: string, message: string): Verdict => ({
  refusals: [{ code, message }],
  doubts: [],
  notes: [],
});

/** Objections to putting a male in with a female. Source: pairing, readySize, recovery, maleStay. */
export function assessIntroduction({ male, female }: Introduced, picture: Picture): Verdict {
  const [he, she] = [picture.animal(male), picture.animal(female)];
  if (!he || !she) return noObjection;
  if (he.id === she.id) return refusal('same-animal', 'A snake cannot visit itself.');
  if (he.sex === 'female') return refusal('not-male', `${he.name} is on record as a female.`);
  if (she.sex === 'male') {
    return refusal('same-sex', `${she.name} is on record as a male; two males fight.`);
  }
  if (he.visit) {
    const host = picture.animal(he.visit.with)?.name ?? 'another female';
    return refusal('already-visiting', `${he.name} is still in with ${host}. Take him out first.`);
  }
  const { facts } = picture;
  const doubts: Doubt[] = [];
  const ask = (code: string, message: string) => doubts.push({ code, message });
  const visitor = facts.visitorOf(she);
  if (visitor) ask('second-male', `${facts.nameOf(visitor)} is in there already.`);
  for (const each of [he, she]) {
    const digests = digesting(each, facts.protocol.mealToPairingDays, facts);
    if (digests !== undefined) {
      ask('fed-lately', `${each.name} is ${digests}. Mating now may bring the meal up.`);
    }
    const [against] = againstPairing(each, facts);
    if (against !== undefined) ask('not-ready', `${each.name}: ${against}`);
    if (each.quarantine) ask('quarantine', `${each.name} is in quarantine.`);
    const block = each.visit || facts.visitorOf(each) ? undefined : feedingBlock(each, facts);
    if (block) ask('hold', `${each.name}: ${block}.`);
  }
  const late = tooLate(she, picture);
  if (late !== undefined) ask('too-late', late);
  return { refusals: [], doubts, notes: [] };
}

/** Past ovulation, or about to ovulate: another visit only disturbs her. Source: pairFrom. */
function tooLate(she: Animal, { facts }: Picture): string | undefined {
  const now = facts.standing(she)?.now;
  if (!now || now.season.laid) return undefined;
  if (now.ovulation) return `${she.name} has ovulated: pairing is over for this season.`;
  const { scan } = now;
  return scan?.mm !== undefined && scan.mm >= facts.protocol.pairStopMm
    ? `${she.name} had ${scan.mm} mm follicles at the last scan: you stop at ${facts.protocol.pairStopMm} mm.`
    : undefined;
}
