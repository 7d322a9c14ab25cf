import { compare, fraction, ONE, type Fraction } from './fraction.ts';

/** A word of what a keeper wrote, in lower case, and where it stands. */
export interface Word {
  readonly text: string;
  /** Place in the original, and length there. */
  readonly at: number;
  readonly length: number;
  /** What stands before it: space at most, a sign that joins, a colon, or what ends a thought. */
  readonly after: 'space' | 'joiner' | 'colon' | 'stop';
}

/** Longer texts are cut: nobody writes so many traits. */
export const LONGEST_TEXT = 2_000;

const WORD =
  /\d+[.,]\d+ ?%|\d+ ?%|\d+\.\d+|\d+\/\d+(?![\p{L}\p{N}])|t[+-](?![\p{L}\p{N}])|[\p{L}\p{N}]+/giu;

/** Splits a text into words. Hyphens, full stops and apostrophes are as good as a space. */
export function wordsOf(text: string): readonly Word[] {
  const words: Word[] = [];
  let end = 0;
  for (const match of text.slice(0, LONGEST_TEXT).matchAll(WORD)) {
    const gap = text.slice(end, match.index);
    words.push({
      text: match[0].normalize('NFKC').toLowerCase(),
      at: match.index,
      length: match[0].length,
      after: gapKind(gap),
    });
    end = match.index + match[0].length;
  }
  return words;
}

function gapKind(gap: string): Word['after'] {
  if (/^[ \t\-_'’.]*$/u.test(gap)) return 'space';
  if (/^[ \t]*:[ \t]*$/u.test(gap)) return 'colon';
  return /^[ \t]*[/+&][ \t]*$/u.test(gap) ? 'joiner' : 'stop';
}

/** A name as its words, joined by single spaces; two names that agree here are the same to a reader. */
export const spoken = (name: string): string =>
  wordsOf(name)
    .map(({ text }) => text)
    .join(' ');

/**
 * A chance as keepers write it: 100 %, 66 %, 50, 12.5 %, 3/5. The trade cuts two thirds to 66 and one
 * third to 33, so 66 to 67 is 2/3 and 33 up to 34 is 1/3. Undefined where it is none: a number
 * without its sign may be a year or a count. 'impossible' where no chance can be it.
 */
export function chanceIn(text: string): Fraction | 'impossible' | undefined {
  const divided = /^(\d+)\/(\d+)$/u.exec(text);
  if (divided) {
    const [, n = '', d = ''] = divided;
    if (n.length > 15 || d.length > 15 || Number(d) === 0) return 'impossible';
    return possible(fraction(BigInt(n), BigInt(d)));
  }
  const percent = /^(\d+)(?:[.,](\d+))? ?(%?)$/u.exec(text);
  if (!percent) return undefined;
  const [, whole = '', decimals = '', sign = ''] = percent;
  const value = Number(`${whole}.${decimals}`);
  if (value >= 66 && value <= 67) return fraction(2, 3);
  if (value >= 33 && value < 34) return fraction(1, 3);
  if (sign === '' && (decimals !== '' || value < 10 || value > 100)) return undefined;
  if (whole.length > 3 || decimals.length > 9) return 'impossible';
  return possible(fraction(BigInt(whole + decimals), 100n * 10n ** BigInt(decimals.length)));
}

const possible = (chance: Fraction): Fraction | 'impossible' =>
  chance.n === 0n || compare(chance, ONE) > 0 ? 'impossible' : chance;

/** The way back; undefined where only a pile of digits would say it. */
export function chanceWords(chance: Fraction): string | undefined {
  if (chance.n === 2n && chance.d === 3n) return '66%';
  if (chance.n === 1n && chance.d === 3n) return '33%';
  const tenths = (chance.n * 1_000n) / chance.d;
  const plain = `${Number(tenths) / 10}%`;
  const back = chanceIn(plain);
  if (typeof back === 'object' && compare(back, chance) === 0) return plain;
  return chance.d < 10n ** 15n ? `${chance.n}/${chance.d}` : undefined;
}
