import { outlookOn } from '../picture/outlook.ts';
import type { Picture } from '../picture/picture.ts';
import type { Forecast, Outlook } from '../season/forecast.ts';
import type { Animal } from '../state/animal.ts';
import type { OwnInterval } from '../windows/own-interval.ts';
import { clutchesIn, firstPip, ownPips, pipOutlook } from './pip-outlook.ts';

/** What the keeper's clutches taught, and of which state of them. */
interface Taught {
  readonly of: readonly unknown[];
  readonly pips: readonly OwnInterval[];
}

const taught = new WeakMap<Picture, Taught>();

/** The same array as long as clutches, incubators and protocol stay as they are. */
function pipsIn(picture: Picture): readonly OwnInterval[] {
  const { ledger, facts } = picture;
  const kinds = [...ledger.subjects.values()].filter(
    (each) => 'kind' in each && (each.kind === 'clutch' || each.kind === 'incubator'),
  );
  const of = [facts.protocol, ledger.hasHistory, ...kinds];
  const before = taught.get(picture);
  if (before?.of.length === of.length && of.every((each, n) => each === before.of[n])) {
    return before.pips;
  }
  const pips = ownPips(picture);
  taught.set(picture, { of, pips });
  return pips;
}

/**
 * What is coming in a female's season. Once she has laid, the first pip follows from the warmth that
 * was read between her eggs; before, from what the keeper's own clutches took.
 */
export function seasonOutlook(picture: Picture, animal: Animal): Outlook {
  const pips = pipsIn(picture);
  const outlook = outlookOn(picture, animal, pips);
  const laid = picture.standing(animal)?.now?.season.laid;
  const clutch = laid && clutchesIn(picture).find((each) => each.laid?.id === laid.id);
  if (!clutch) return outlook;
  const isOver = clutch.closed !== undefined || clutch.counted !== undefined;
  const pip = isOver || firstPip(clutch) ? undefined : pipOutlook(clutch, picture, pips);
  return { ...outlook, forecasts: pip ? [pipForecast(pip)] : [] };
}

const pipForecast = (pip: NonNullable<ReturnType<typeof pipOutlook>>): Forecast => ({
  event: 'first pip',
  from: pip.from,
  likely: pip.likely,
  to: pip.to,
  anchor: 'eggs found',
  anchorFirst: pip.laid.first,
  anchorLast: pip.laid.last,
  ownCycles: pip.ownClutches,
  herCycles: pip.herClutches,
  notBefore: pip.notBefore,
  readShare: pip.readShare,
  ...(pip.isPast ? { isPast: true } : {}),
});
