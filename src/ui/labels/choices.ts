import { formatsOn, LABEL_FORMATS } from '../../domain/labels/formats.ts';
import type { LabelFormat } from '../../domain/labels/format.ts';
import { readOffset, type OffsetMm } from '../../domain/labels/offset.ts';
import type { LabelSubject } from '../../domain/labels/subject.ts';
import { remember, remembered } from '../remember.ts';

/** What a keeper chose last time, since the printer and its paper stay the same. */
export interface Choices {
  readonly kind: LabelSubject['kind'];
  readonly formatId: string;
  readonly holdsLink: boolean;
  readonly startAt: number;
  readonly offset: OffsetMm;
}

const KEY = 'labels';

const FIRST: Choices = {
  kind: 'tub',
  formatId: 'a4-24-64x34',
  holdsLink: false,
  startAt: 1,
  offset: { x: 0, y: 0 },
};

/** The chosen format, or the first of all where an older version remembered another. */
export function formatOf({ formatId }: Choices): LabelFormat {
  const [first] = formatsOn('a4');
  const chosen = LABEL_FORMATS.find(({ id }) => id === formatId) ?? first;
  if (!chosen) throw new Error('There are no label formats.');
  return chosen;
}

/** The last choices; first ones where nothing usable was kept. */
export function recallChoices(): Choices {
  try {
    const kept: unknown = JSON.parse(remembered(KEY) ?? 'null');
    return isRecord(kept) ? readChoices(kept) : FIRST;
  } catch {
    return FIRST; // Not JSON: written by something else under our name.
  }
}

/** Keeps choices for next time. */
export const rememberChoices = (choices: Choices): void => remember(KEY, JSON.stringify(choices));

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const kinds = ['tub', 'animal', 'room', 'clutch', 'incubator'] as const;

function readChoices(kept: Readonly<Record<string, unknown>>): Choices {
  const offset = isRecord(kept['offset']) ? kept['offset'] : {};
  return {
    kind: kinds.find((kind) => kind === kept['kind']) ?? 'tub',
    formatId: typeof kept['formatId'] === 'string' ? kept['formatId'] : FIRST.formatId,
    holdsLink: kept['holdsLink'] === true,
    startAt: typeof kept['startAt'] === 'number' ? kept['startAt'] : 1,
    offset: { x: readOffset(Number(offset['x'])), y: readOffset(Number(offset['y'])) },
  };
}
