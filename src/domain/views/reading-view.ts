import type { Catalogue } from '../genes/catalogue.ts';
import { readTraits } from '../genes/read-traits.ts';
import { genesBook } from '../genes-book/genes-book.ts';
import type { Picture } from '../picture/picture.ts';

/** What was made of words about genes. */
export interface Reading {
  /** Words, as written, that name nothing known: kept as stated, not reckoned with. */
  readonly unknown: readonly {
    readonly words: string;
    readonly nearest: readonly string[];
    readonly message: string | undefined;
  }[];
  /** What cannot be so, and is left out. */
  readonly against: readonly string[];
  readonly notes: readonly string[];
  /** How many genes were understood. */
  readonly understood: number;
}

export function readingOf(text: string, catalogue: Catalogue): Reading {
  const { unknown, contradictions, notes, loci } = readTraits(text, catalogue);
  return {
    unknown: unknown.map(({ words, nearest, message }) => ({
      words: asWritten(words, text),
      nearest,
      message,
    })),
    against: contradictions.map(({ message }) => message),
    notes: notes.map(({ message }) => message),
    understood: loci.size,
  };
}

/** Of a text that is still being typed, with the keeper's own genes. */
export const readingView = (text: string, picture: Picture): Reading =>
  readingOf(text, genesBook(picture).catalogue);

/** The reader goes by small letters; a keeper knows a name as it was written. */
function asWritten(words: string, text: string): string {
  const at = text.toLowerCase().indexOf(words);
  return at < 0 ? words : text.slice(at, at + words.length);
}
