import { outlookOn } from '../picture/outlook.ts';
import type { Picture } from '../picture/picture.ts';
import type { Forecast, Outlook } from '../season/forecast.ts';
import type { Animal } from '../state/animal.ts';
import { clutchesIn } from './clutches-in.ts';
import { firstPip } from './first-pip.ts';
import { ownPips } from './own-pips.ts';
import { pipOutlook } from './pip-outlook.ts';

/**
 * What is coming in a female's season. Once she has laid, the first pip follows from the warmth that
 * was read between her eggs; before, from what the keeper's own clutches took.
 */
export function seasonOutlook(picture: Picture, animal: Animal): Outlook {
  const pips = ownPips(picture);
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
