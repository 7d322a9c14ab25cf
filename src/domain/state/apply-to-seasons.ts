import { DAY_MS, instantMs, type Moment } from '../core/calendar.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Animal } from './animal.ts';
import type { Copy } from './copy.ts';
import { keep } from './keep.ts';
import type { Season, Seen } from './season.ts';

/** After eggs, a look at the follicles belongs to the same season for a while: is she empty? */
const AFTER_LAYING_DAYS = 60;
/** After so long without a record of it, the next one begins a new season. */
const SILENT_DAYS = 200;
/** Where females are scanned all year round, a season without ovulation ends with its year. */
const YEAR_DAYS = 365;

const KEPT = { scans: 30, signs: 30, stays: 24, locks: 24, sheds: 6, seasons: 8 };

/** Every kind of record that a season is made of. */
export type SeasonEvent = EventOf<
  | 'introduced'
  | 'taken-out'
  | 'pair-seen'
  | 'follicles-scanned'
  | 'sign-seen'
  | 'ovulated'
  | 'nothing-yet'
  | 'shed'
  | 'nest-box-set'
  | 'laid'
  | 'season-closed'
>;

/** A shed, a look or an end says something of a season, and does not begin one. */
const opens = (event: SeasonEvent): boolean =>
  event.type === 'shed'
    ? event.preLay === true
    : !['taken-out', 'nothing-yet', 'nest-box-set', 'season-closed'].includes(event.type);

/** The animal's seasons after an event. Total, like all reducers. */
export function applyToSeasons(animal: Copy<Animal>, event: SeasonEvent): void {
  const open = animal.season && !isOver(animal.season, event) ? animal.season : undefined;
  if (open) {
    animal.season = withEvent(open, event);
  } else if (opens(event)) {
    if (animal.season) {
      // The last one is kept whole: the fathers of its clutch, and stored sperm, are asked for later.
      const past = [...animal.pastSeasons.map(inShort), animal.season];
      animal.pastSeasons = past.slice(-KEPT.seasons);
    }
    animal.season = withEvent(newSeason(animal, event.at), event);
  }
}

const daysAfter = (earlier: Moment, later: Moment): number =>
  (instantMs(later) - instantMs(earlier)) / DAY_MS;

/** Whether an event can no longer belong to a season. */
function isOver(season: Season, event: SeasonEvent): boolean {
  if (daysAfter(season.lastAt, event.at) > SILENT_DAYS) return true;
  if (!season.ovulation && daysAfter(season.openedAt, event.at) > YEAR_DAYS) return opens(event);
  if (season.closed) return opens(event);
  return season.laid !== undefined && daysAfter(season.laid.at, event.at) > AFTER_LAYING_DAYS;
}

const newSeason = (animal: Animal, at: Moment): Season => ({
  openedAt: at,
  lastAt: at,
  baselineG: animal.weighings.at(-1)?.massG,
  scans: [],
  signs: [],
  stays: [],
  locks: [],
  sheds: [],
});

const seen = ({ id, at, notBefore, precision }: RackEvent): Seen =>
  precision === 'between' && notBefore !== undefined ? { id, at, notBefore } : { id, at };

function withEvent(before: Season, event: SeasonEvent): Season {
  const season: Copy<Season> = { ...before };
  // Every snake sheds all year: only a shed that is said to be pre-lay keeps a season going.
  if (event.type !== 'shed' || event.preLay === true) season.lastAt = event.at;
  const what = seen(event);
  switch (event.type) {
    case 'introduced': {
      const { id, male, female, at: since } = event;
      season.stays = keep(season.stays, { id, male, female, since }, KEPT.stays);
      break;
    }
    case 'taken-out':
      season.stays = season.stays.map((stay) =>
        stay.until === undefined && stay.male === event.male && stay.female === event.female
          ? { ...stay, until: event.at, outId: event.id }
          : stay,
      );
      break;
    case 'pair-seen':
      if (event.seen === 'locked') {
        const { male, female } = event;
        season.locks = keep(season.locks, { ...what, male, female }, KEPT.locks);
      }
      break;
    case 'follicles-scanned':
      season.scans = keep(season.scans, { ...what, found: event.found }, KEPT.scans);
      break;
    case 'sign-seen':
      season.signs = keep(season.signs, { ...what, sign: event.sign }, KEPT.signs);
      break;
    default:
      after(season, event, what);
  }
  return season;
}

function after(season: Copy<Season>, event: SeasonEvent, what: Seen): void {
  switch (event.type) {
    case 'ovulated':
      season.ovulation = { ...what, sure: event.sure };
      break;
    case 'nothing-yet':
      if (event.lookedFor === 'ovulation') season.noOvulation = what;
      else season.noEggs = what;
      break;
    case 'shed':
      season.sheds = keep(season.sheds, { ...what, preLay: event.preLay }, KEPT.sheds);
      break;
    case 'nest-box-set':
      season.nestBox = { ...what, is: event.is };
      break;
    case 'laid': {
      const { clutch, good, slugs, unsure, clutchMassG, damMassG, care } = event;
      season.laid ??= { ...what, clutch, good, slugs, unsure, clutchMassG, damMassG, care };
      break;
    }
    case 'season-closed':
      season.closed = { ...what, why: event.why };
      break;
    default: // Everything else is taken in above.
  }
}

/** What later seasons learn from one that is long over: dates, and the first of each sign. */
function inShort(season: Season): Season {
  const firstOfKind = season.signs.filter(
    ({ sign }, i) => season.signs.findIndex((each) => each.sign === sign) === i,
  );
  return { ...season, signs: firstOfKind, stays: [], locks: season.locks.slice(-1) };
}
