import { ownPip } from '../incubation/own-pip.ts';
import type { Picture } from '../picture/picture.ts';
import { spanOf } from '../season/span.ts';
import type { OwnInterval } from '../windows/own-interval.ts';
import { clutchesIn, incubatorsIn } from './clutches-in.ts';
import { firstPip } from './first-pip.ts';
import { isIncubated, progressUpTo } from './pip-outlook.ts';

/** What was learnt, and all that it hangs on. */
interface Learnt {
  readonly from: readonly unknown[];
  readonly pips: readonly OwnInterval[];
}

const kept = new WeakMap<Picture['ledger'], Learnt>();

/**
 * What the keeper's own clutches teach, in days as at 31.5 °C. The same array for as long as no
 * record of eggs or incubators is added: years of readings are not gone through for each view.
 */
export function ownPips(picture: Picture): readonly OwnInterval[] {
  const { ledger, facts } = picture;
  // Old readings come with the history, and change no clutch.
  const from = [
    facts.protocol,
    ledger.hasHistory,
    ...clutchesIn(picture),
    ...incubatorsIn(picture),
  ];
  const before = kept.get(ledger);
  if (before?.from.length === from.length && from.every((each, n) => each === before.from[n])) {
    return before.pips;
  }
  const pips = learnFrom(picture);
  kept.set(ledger, { from, pips });
  return pips;
}

function learnFrom(picture: Picture): readonly OwnInterval[] {
  const { nightOf } = picture.facts;
  return clutchesIn(picture).flatMap((clutch) => {
    const pip = firstPip(clutch);
    if (!clutch.laid || !clutch.dam || !pip || !isIncubated(clutch)) return [];
    const [laid, pipped] = [spanOf(clutch.laid, nightOf), spanOf(pip, nightOf)];
    const { progress } = progressUpTo(clutch, laid, pipped.last, picture);
    return ownPip(clutch.dam, laid, pipped, progress) ?? [];
  });
}
