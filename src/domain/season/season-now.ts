import { daysBetween, type Day } from '../core/calendar.ts';
import { readingsOf } from '../follicles/reading.ts';
import { suggestResorbing, type Resorbing } from '../follicles/resorbing.ts';
import type { Animal } from '../state/animal.ts';
import type { Scan, Season } from '../state/season.ts';
import { preLayShed, type PreLay } from './pre-lay.ts';
import { largestMm } from './sizes.ts';
import { ovulationSpan } from './span.ts';
import type { LastScan, Ovulation, SeasonNow, StageFacts } from './standing.ts';

/** A season nothing was written in for so long is over. */
const SILENT_DAYS = 200;

/** The season under way; undefined between two seasons. */
export function seasonNow(animal: Animal, facts: StageFacts): SeasonNow | undefined {
  const { season } = animal;
  if (!season || season.closed) return undefined;
  const { protocol, night, nightOf } = facts;
  if (daysBetween(nightOf(season.lastAt), night) > SILENT_DAYS) return undefined;
  const preLay = preLayShed(season, protocol, nightOf);
  const ovulation = ovulationOf(season, preLay, facts);
  return {
    season,
    scan: lastScan(season.scans, facts),
    signs: freshSigns(season, facts),
    ovulation,
    preLay,
    resorbing: ovulation || season.laid ? undefined : resorbingOf(season, facts),
  };
}

function lastScan(scans: readonly Scan[], { protocol, nightOf }: StageFacts): LastScan | undefined {
  const scan = scans.at(-1);
  return (
    scan && {
      night: nightOf(scan.at),
      mm: largestMm(scan, protocol),
      isFelt: scan.found.method === 'palpation',
      id: scan.id,
    }
  );
}

function freshSigns(season: Season, { protocol, night, nightOf }: StageFacts): readonly string[] {
  const fresh = season.signs.filter(
    ({ at }) => daysBetween(nightOf(at), night) <= protocol.signsFreshDays,
  );
  return [...new Set(fresh.map(({ sign }) => sign))];
}

const isEgg = ({ found }: Scan) => found.method === 'palpation' && found.felt === 'egg-like';

/** On record, or made certain by the pre-lay shed or by egg-like lumps. */
function ovulationOf(
  season: Season,
  preLay: PreLay | undefined,
  { nightOf }: StageFacts,
): Ovulation | undefined {
  const { ovulation, scans } = season;
  if (ovulation) {
    return { how: ovulation.sure, id: ovulation.id, ...ovulationSpan(ovulation, nightOf) };
  }
  if (preLay) {
    const { night } = preLay;
    return { how: 'from the shed', first: night, last: night, id: preLay.shed.id };
  }
  const at = scans.findIndex(isEgg);
  const egg = scans[at];
  if (!egg) return undefined;
  const last = nightOf(egg.at);
  const before: Day = nightOf(scans[at - 1]?.at ?? season.openedAt);
  return { how: 'from a scan', first: before, last, id: egg.id };
}

/** Falling scans are looked into only where there are any, since most seasons have none. */
function resorbingOf(season: Season, facts: StageFacts): Resorbing | undefined {
  if (season.scans.length < 3) return undefined;
  return suggestResorbing(
    readingsOf(season.scans, facts.scanErrors(), facts.protocol),
    facts.protocol,
  );
}
