import { DAY_MS } from '../core/calendar.ts';
import { createPicture, type Picture } from '../picture/picture.ts';
import { rules } from '../rules/all.ts';
import { tonightView, type TonightView } from './tonight-view.ts';

/** The list of the next night at this hour, as it will be if nothing is written down until then. */
export function tomorrowView({ ledger, clock }: Picture): TonightView {
  return tonightView(createPicture(ledger, { ...clock, ms: clock.ms + DAY_MS }, rules));
}
