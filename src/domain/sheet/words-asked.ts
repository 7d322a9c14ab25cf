import type { UnknownWord } from './item.ts';

/** Collects words of closed lists that are not known, and answers with what the keeper said. */
export function createWordsAsked(answers: Readonly<Record<string, string>>) {
  const unknown = new Map<string, UnknownWord>();
  return {
    /** What a word stands for: itself where it is known, else what the keeper said, else nothing. */
    meaningOf<Meant extends string>(
      list: string,
      {
        text,
        heading,
        line,
      }: { readonly text: string; readonly heading: string; readonly line: number },
      known: Meant | undefined,
      choices: readonly Meant[],
    ): Meant | undefined {
      if (known !== undefined) return known;
      const word = text.trim().slice(0, 40);
      const key = `${list}:${word.toLowerCase()}`;
      const as = choices.find((choice) => choice === answers[key]);
      const before = unknown.get(key);
      unknown.set(
        key,
        before
          ? { ...before, count: before.count + 1 }
          : { key, word, heading, count: 1, firstLine: line, choices, as },
      );
      return as;
    },
    all: (): readonly UnknownWord[] => [...unknown.values()],
  };
}

export type WordsAsked = ReturnType<typeof createWordsAsked>;
