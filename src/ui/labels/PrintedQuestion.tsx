import { useEffect, useRef } from 'preact/hooks';

export interface PrintedQuestionProps {
  readonly count: number;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

/** Only the keeper sees what came out of the printer, so the keeper is asked. */
export function PrintedQuestion({ count, onYes, onNo }: PrintedQuestionProps) {
  const question = useRef<HTMLHeadingElement>(null);
  useEffect(() => question.current?.focus(), []);
  return (
    <section class="labels-question" aria-labelledby="labels-question">
      <h2 id="labels-question" tabIndex={-1} ref={question}>
        {count === 1 ? 'Did the label come out well?' : `Did all ${count} labels come out well?`}
      </h2>
      <div class="labels-pair">
        <button type="button" class="labels-main" onClick={onYes}>
          Yes
        </button>
        <button type="button" onClick={onNo}>
          Not yet
        </button>
      </div>
    </section>
  );
}
