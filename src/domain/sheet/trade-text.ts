import { SEXES } from '../commands/read-animal-lines.ts';
import type { Outcome, Prey } from '../events/feeding.ts';
import type { EventOf } from '../events/event.ts';
import type { Sex } from '../events/life.ts';
import { preySizes } from '../protocol/prey-sizes.ts';

// How keepers write what happened. Common practice, no source.

/** A cell that says nothing. */
export const isBlank = (text: string): boolean =>
  /^\s*(?:[-–—.?/]*|n\/?a|none|nil)\s*$/i.test(text);

const plain = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, ' ');

export const sexIn = (text: string): Sex | undefined => SEXES.get(plain(text));

const OUTCOMES: readonly (readonly [RegExp, Outcome])[] = [
  [/\b(?:part(?:ly|ial(?:ly)?)?|half)\b/, 'partly'],
  [/\b(?:left|overnight|pending)\b/, 'left'],
  [/\b(?:refus\w*|ref|declin\w*|no|n|not?|did ?n.t|skipped|off)\b|✗|✘/, 'refused'],
  [/\b(?:ate|eaten|eats?|yes|y|took|taken|fed|accepted|ok)\b|✓|✔/, 'ate'],
];

export const outcomeIn = (text: string): Outcome | undefined =>
  OUTCOMES.find(([pattern]) => pattern.test(plain(text)))?.[1];

export const isRegurgitation = (text: string): boolean =>
  /\bregurg|\bregurge|brought up/i.test(text);

const KINDS: readonly (readonly [RegExp, Prey['kind']])[] = [
  [/\b(?:asf|soft.?furred|natal)/, 'soft-furred rat'],
  [/\brats?\b/, 'rat'],
  [/\b(?:mouse|mice)\b/, 'mouse'],
  [/\bgerbils?\b/, 'gerbil'],
  [/\bchicks?\b/, 'chick'],
];

const SIZES: readonly (readonly [RegExp, string])[] = [
  [/\bpink(?:y|ie|ies)?s?\b/, 'pink'],
  [/\bfuzz(?:y|ie|ies)\b/, 'fuzzy'],
  [/\bpup(?:py)?s?\b/, 'pup'],
  [/\bhoppers?\b/, 'hopper'],
  [/\bwean(?:ed|er|ling)s?\b/, 'weaned'],
  [/\b(?:small|sm)\b/, 'small'],
  [/\b(?:medium|med)\b/, 'medium'],
  [/\b(?:large|lg)\b/, 'large'],
  [/\badults?\b/, 'adult'],
];

const STATES: readonly (readonly [RegExp, Prey['state']])[] = [
  [/\blive\b/, 'live'],
  [/\b(?:fresh|p\/?k|pre.?killed)\b/, 'fresh'],
];

const find = <Found>(
  list: readonly (readonly [RegExp, Found])[],
  text: string,
): Found | undefined => list.find(([pattern]) => pattern.test(text))?.[1];

/** What stands for the size where it was not written down. */
const UNSIZED = 'unsized';
const ANY_MEAL = 'meal';

/** `2 rats`, `2x rat`, `rat x2`; not the grams of one. */
const PIECES = /(?:^|\s)(\d)(?:\s*[x×](?=\s|$)|\s+(?!g\b|gr\b|grams?\b)(?=[a-z]))|[x×]\s*(\d)\b/;

/**
 * A meal as written: `2 x small rats F/T`, `1 hopper`, `rat 45 g`. What is no word of the trade is
 * kept as the name of the size. Thawed, unless it says live or fresh.
 */
export function preyIn(written: string, massG?: number): Prey {
  const text = plain(written);
  const kind = find(KINDS, text);
  const size = find(SIZES, text);
  const [, grams] = /(\d+(?:[.,]\d+)?)\s*g(?:r|rams?)?\b/.exec(text) ?? [];
  const said = massG ?? (grams === undefined ? undefined : Number(grams.replace(',', '.')));
  const [, before, behind] = PIECES.exec(text) ?? [];
  const named = kind !== undefined || size !== undefined;
  const usual = preySizes.find((each) => each.kind === (kind ?? 'rat') && each.size === size);
  const eachG = said ?? usual?.eachG;
  return {
    kind: kind ?? (usual && size !== undefined ? 'rat' : 'other'),
    size: size ?? (named ? UNSIZED : text === '' ? ANY_MEAL : written.trim().slice(0, 20)),
    ...(eachG === undefined || !(eachG > 0 && eachG <= 400) ? {} : { eachG }),
    count: Math.min(6, Math.max(1, Number(before ?? behind ?? 1))),
    state: find(STATES, text) ?? 'thawed',
  };
}

export const isPreyText = (text: string): boolean =>
  find(KINDS, plain(text)) !== undefined || find(SIZES, plain(text)) !== undefined;

type Quality = EventOf<'shed'>['quality'];

const QUALITIES: readonly (readonly [RegExp, Quality])[] = [
  [/\b(?:caps?|eye)/, 'caps left'],
  [/\btail/, 'tail tip left'],
  [/\b(?:piece|bad|broken|stuck|incomplete|partial|poor)/, 'pieces'],
  [/\b(?:whole|complete|full|good|clean|perfect|one|yes|y|shed|x|ok)\b|✓|✔/, 'whole'],
];

/** Undefined: not understood, or none. */
export const shedIn = (text: string): Quality | undefined => find(QUALITIES, plain(text));

/** What a row of a list of events is about. */
export type Happening =
  'weight' | 'meal' | 'refusal' | 'shed' | 'blue' | 'regurgitated' | 'length' | 'note';

const HAPPENINGS: readonly (readonly [RegExp, Happening])[] = [
  [/regurg/, 'regurgitated'],
  [/refus|not eat|no meal/, 'refusal'],
  [/\bblue\b|opaque/, 'blue'],
  [/shed/, 'shed'],
  [/weigh|weight|mass\b/, 'weight'],
  [/\bfe+d|feed|meal|\bate\b|\beat/, 'meal'],
  [/length|measure/, 'length'],
  [/note|remark|comment|health|clean|other/, 'note'],
];

export const happeningIn = (text: string): Happening | undefined => find(HAPPENINGS, plain(text));
