import { momentOf, type Moment } from '../core/calendar.ts';
import type { RackEvent } from '../events/event.ts';
import type { Content, When } from './item.ts';

/** Why a whole import was struck. What was struck for it is taken in again, if it comes again. */
export const IMPORT_UNDONE = 'Import undone';

const tenth = (value: number): string => value.toFixed(1);

/** What a record says, by all that makes it another record when it differs; remarks do not. */
export function valuesOf(content: Content | RackEvent): string | undefined {
  switch (content.type) {
    case 'weighed':
      return `weighed ${tenth(content.massG)}`;
    case 'meal-offered': {
      const { prey, outcome } = content;
      return `meal ${outcome} ${prey.count} ${prey.kind} ${prey.size}`;
    }
    case 'shed':
      return `shed ${content.quality}`;
    case 'measured':
      return `measured ${tenth(content.lengthCm)}`;
    case 'noted':
      return `noted ${content.text}`;
    case 'opaque-seen':
    case 'regurgitated':
      return content.type;
    default:
      return undefined;
  }
}

interface There {
  readonly at: Moment;
  readonly isDayOnly: boolean;
  isTaken: boolean;
}

const clockText = (clockMs: number): string =>
  momentOf({ ms: clockMs, offsetMin: 0 }).slice(11, 16);

/**
 * The records of one animal, to find those again that a file holds too. Each is found once: two of
 * the same in the file need two here.
 *
 * A record found again is that of the same day and the same values, and of the same minute where both
 * know it; one that the keeper struck or amended by hand counts as there.
 */
export function createThereAlready(
  history: readonly RackEvent[],
  reasonStruck: (id: RackEvent['id']) => string | undefined,
) {
  const there = new Map<string, There[]>();
  for (const event of history) {
    const values = valuesOf(event);
    if (values === undefined || reasonStruck(event.id) === IMPORT_UNDONE) continue;
    const same = there.get(values) ?? [];
    same.push({ at: event.at, isDayOnly: event.precision !== 'minute', isTaken: false });
    there.set(values, same);
  }
  return {
    /** Whether it is there; then the record it was found in is used up. */
    take(content: Content, when: When | undefined): boolean {
      const values = valuesOf(content);
      const same = values === undefined ? undefined : there.get(values);
      const found = same?.find(
        ({ at, isDayOnly, isTaken }) =>
          !isTaken &&
          (when === undefined ||
            (at.slice(0, 10) === when.day &&
              (when.clockMs === undefined ||
                isDayOnly ||
                at.slice(11, 16) === clockText(when.clockMs)))),
      );
      if (found) found.isTaken = true;
      return found !== undefined;
    },
  };
}

/** What makes two rows of one file the same record. */
export const sameRow = ({
  content,
  when,
}: {
  readonly content: Content;
  readonly when?: When | undefined;
}): string => `${valuesOf(content) ?? ''} ${when?.day ?? ''} ${when?.clockMs ?? ''}`;
