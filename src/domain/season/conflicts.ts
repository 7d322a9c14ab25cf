import { daysBetween } from '../core/calendar.ts';
import { spreadOf, type LinkName } from '../windows/link.ts';
import type { Season } from '../state/season.ts';
import { preLayShed } from './pre-lay.ts';
import type { StageFacts } from './standing.ts';

/**
 * Records of a season that cannot all be true, a question each: they came from another phone, or were
 * corrected into each other's way, or one of the dates is wrong.
 */
export function conflictsIn(season: Season, facts: StageFacts): readonly string[] {
  const { protocol, nightOf } = facts;
  const preLay = preLayShed(season, protocol, nightOf);
  const { ovulation, laid } = season;
  const questions: string[] = [];
  const hold = (link: LinkName, days: number, words: string): void => {
    const { neverBefore, neverAfter } = spreadOf(link, protocol);
    if (days < neverBefore || days > neverAfter) {
      questions.push(
        `${words}: ${days} days. It takes ${neverBefore}–${neverAfter}. Which is wrong?`,
      );
    }
  };
  if (ovulation && preLay) {
    const days = daysBetween(nightOf(ovulation.at), preLay.night);
    hold('ovulation to shed', days, 'From ovulation to pre-lay shed');
  }
  if (preLay && laid) {
    const days = daysBetween(preLay.night, nightOf(laid.at));
    hold('shed to lay', days, 'From pre-lay shed to eggs');
  } else if (ovulation && laid) {
    const shed = spreadOf('ovulation to shed', protocol);
    const lay = spreadOf('shed to lay', protocol);
    const days = daysBetween(nightOf(ovulation.at), nightOf(laid.at));
    const [from, to] = [shed.neverBefore + lay.neverBefore, shed.neverAfter + lay.neverAfter];
    if (days < from || days > to) {
      questions.push(
        `From ovulation to eggs: ${days} days. It takes ${from}–${to}. Which is wrong?`,
      );
    }
  }
  return questions;
}
