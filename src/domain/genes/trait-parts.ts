import type { Fraction } from './fraction.ts';
import { nearestNames } from './nearest-names.ts';
import type { Dictionary, Meaning } from './trait-dictionary.ts';
import type { Place } from './trait-statement.ts';
import { chanceIn, type Word } from './trait-text.ts';

export type Modifier = 'het' | 'possible' | 'super' | 'visual' | 'double' | 'triple';

/** One or more words that mean one thing; whether a thought ended before them, or a list begins. */
export type Part = Place & { readonly begins: boolean; readonly lists: boolean } & (
    | { readonly kind: 'name'; readonly said: string; readonly meaning: Meaning }
    | { readonly kind: 'modifier'; readonly words: readonly Modifier[] }
    | { readonly kind: 'chance'; readonly chance: Fraction | 'impossible' }
    | { readonly kind: 'maker'; readonly on: 'X' | 'Y' }
    | { readonly kind: 'normal' }
    | { readonly kind: 'unknown'; readonly word: string; readonly nearest: readonly string[] }
  );

const modifiers: ReadonlyMap<string, readonly Modifier[]> = new Map([
  ['het', ['het']],
  ['hets', ['het']],
  ['heterozygous', ['het']],
  ['pos', ['possible']],
  ['poss', ['possible']],
  ['possible', ['possible']],
  ['ph', ['possible', 'het']],
  ['super', ['super']],
  ['homozygous', ['super']],
  ['hom', ['super']],
  ['visual', ['visual']],
  ['double', ['double']],
  ['triple', ['triple']],
  ['dh', ['double', 'het']],
  ['th', ['triple', 'het']],
] as const);
const fillers = new Set(['and', 'for', 'gene', 'genes', 'line', 'morph', 'single', 'the', 'with']);
const normals = new Set(['normal', 'wild type', 'wildtype', 'wt', 'classic']);
const makers: ReadonlyMap<string, 'X' | 'Y'> = new Map([
  ['male maker', 'Y'],
  ['malemaker', 'Y'],
  ['female maker', 'X'],
  ['femalemaker', 'X'],
] as const);

/** Whether words already mean something, so that no name of a catalogue can be the same. */
export const isTaken = (sound: string): boolean =>
  modifiers.has(sound) ||
  fillers.has(sound) ||
  normals.has(sound) ||
  makers.has(sound) ||
  chanceIn(sound) !== undefined;

/** Beyond so many words that nobody knows, names are no longer looked for. */
const MOST_GUESSES = 20;

/** The longest meaning that begins at each word, one after another. */
export function partsOf(words: readonly Word[], dictionary: Dictionary): readonly Part[] {
  const parts: Part[] = [];
  let begins = true;
  let guesses = 0;
  for (let at = 0; at < words.length;) {
    const first = words[at];
    if (!first) break;
    begins ||= first.after === 'stop';
    const run = runFrom(words, at, Math.max(2, dictionary.longest));
    const guess = guesses < MOST_GUESSES;
    const { count, part } = meaningOf(run, dictionary, guess);
    const last = run[count - 1] ?? first;
    if (part) {
      parts.push({
        ...part,
        at: first.at,
        length: last.at + last.length - first.at,
        begins,
        lists: first.after === 'colon',
      });
      begins = false;
      if (part.kind === 'unknown') guesses++;
    }
    at += count;
  }
  return parts;
}

/** Words up to the next sign between them: names do not reach across one. */
function runFrom(words: readonly Word[], from: number, most: number): readonly Word[] {
  const run = words.slice(from, from + most);
  const end = run.findIndex(({ after }, n) => n > 0 && after !== 'space');
  return end < 0 ? run : run.slice(0, end);
}

type Bare = Part extends infer Each
  ? Each extends Part
    ? Omit<Each, 'at' | 'length' | 'begins' | 'lists'>
    : never
  : never;
interface Found {
  readonly count: number;
  /** None for a word that only fills. */
  readonly part?: Bare;
}

function meaningOf(run: readonly Word[], dictionary: Dictionary, guess: boolean): Found {
  const sounds = run.map((_, n) =>
    run
      .slice(0, n + 1)
      .map(({ text }) => text)
      .join(' '),
  );
  for (const [n, sound] of [...sounds.entries()].toReversed()) {
    const part = knownPart(sound, dictionary);
    if (part) return { count: n + 1, part };
  }
  const [word = ''] = sounds;
  if (fillers.has(word)) return { count: 1 };
  const chance = chanceIn(word);
  if (chance !== undefined) return { count: 1, part: { kind: 'chance', chance } };
  const near = guess ? sounds.map((sound) => nearestNames(sound, dictionary)) : [];
  // "Blak Pastel" is one slip and not a Pastel: the longest run that is near a name is one unknown.
  const longest = near.findLastIndex((names, n) =>
    names.some((name) => name.split(/[ -]/u).length === n + 1),
  );
  const count = Math.max(1, longest + 1);
  const nearest = near[count - 1] ?? [];
  return { count, part: { kind: 'unknown', word: sounds[count - 1] ?? word, nearest } };
}

function knownPart(sound: string, { meanings, names }: Dictionary): Bare | undefined {
  const meaning = meanings.get(sound);
  if (meaning) return { kind: 'name', said: names.get(sound) ?? sound, meaning };
  const words = modifiers.get(sound);
  if (words) return { kind: 'modifier', words };
  const on = makers.get(sound);
  if (on) return { kind: 'maker', on };
  return normals.has(sound) ? { kind: 'normal' } : undefined;
}
