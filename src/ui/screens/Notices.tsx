import { Icon } from '../components/Icon.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { useModel } from '../model.ts';

/** What was just written, with undo, and what went wrong. One place on each screen. */
export function Notices() {
  const model = useModel();
  const { message, remedy } = model.trouble.value ?? { message: undefined, remedy: '' };
  const written = model.written.value;
  return (
    <div class="notices">
      <div role="alert">
        {message !== undefined && (
          <div class="written trouble arrives">
            <Icon name="alarm" />
            <span>
              {message} <small>{remedy}</small>
            </span>
            <button
              type="button"
              class="pill"
              onClick={() => {
                model.trouble.value = undefined;
              }}
            >
              OK
            </button>
          </div>
        )}
      </div>
      <div role="status">
        {written && (
          <div class="written arrives" key={written.words}>
            <Icon name="check" />
            <span>
              {written.words}
              {written.notes.map((note) => (
                <small key={note}> {note}</small>
              ))}
            </span>
            {written.ids.length > 0 && (
              <button type="button" class="pill" onClick={() => void model.undo()}>
                <Icon name="undo" />
                Undo
              </button>
            )}
          </div>
        )}
      </div>
    </div>
  );
}

/** Asks about what looks wrong, with the likely intended value as a button. */
export function Asking() {
  const model = useModel();
  const open = model.asking.value;
  if (!open) return null;
  const { writing, doubts, mayBeRight } = open;
  const close = () => {
    model.asking.value = undefined;
  };
  const accepted = doubts.map(({ code }) => code);
  return (
    <Sheet title={mayBeRight ? 'Sure?' : 'That cannot be'} onClose={close}>
      {doubts.map(({ code, message, instead }) => (
        <div class="stack" key={code}>
          <p>{message}</p>
          {instead && writing.instead && (
            <button
              type="button"
              class="slab slab-main"
              onClick={() => {
                const drafts = writing.instead?.(instead.value, instead.across);
                if (drafts)
                  void model.write({
                    ...writing,
                    drafts,
                    words: `${writing.words} → ${instead.label}`,
                  });
              }}
            >
              <span>
                Write {instead.label}
                <small>instead</small>
              </span>
            </button>
          )}
        </div>
      ))}
      <div class="two">
        <button type="button" class="slab" onClick={close}>
          Go back
        </button>
        {mayBeRight && (
          <button
            type="button"
            class="slab slab-warn"
            onClick={() => void model.write(writing, accepted)}
          >
            Yes, write it
          </button>
        )}
      </div>
    </Sheet>
  );
}
