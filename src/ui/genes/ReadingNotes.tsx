import type { Reading } from '../../domain/views/reading-view.ts';

/** Which words about genes were not understood, or cannot be so. Nothing is thrown away for it. */
export function ReadingNotes({
  reading: { unknown, against, notes },
  onOwn,
}: {
  readonly reading: Reading;
  /** Makes a gene of the keeper's own of a word. */
  readonly onOwn?: ((words: string) => void) | undefined;
}) {
  return (
    <>
      {unknown.map(({ words, nearest, message }) => (
        <p class="note small" key={words}>
          <strong>“{words}”</strong> is kept as stated, but not reckoned with.{' '}
          {message !== undefined && `${message} `}
          {nearest.length > 0 && `Near it: ${nearest.join(', ')}. `}
          {onOwn && (
            <button type="button" class="pill" onClick={() => onOwn(words)}>
              Make it a gene<span class="hidden-words"> of {words}</span>
            </button>
          )}
        </p>
      ))}
      {against.map((message) => (
        <p class="note note-warn small" key={message}>
          {message} That gene is left out until it is put right.
        </p>
      ))}
      {notes.map((message) => (
        <p class="quiet small" key={message}>
          {message}
        </p>
      ))}
    </>
  );
}
