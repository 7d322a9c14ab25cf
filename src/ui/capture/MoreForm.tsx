import { useState } from 'preact/hooks';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useDraft } from '../model.ts';
import { CallVet } from '../screens/CallVet.tsx';
import type { FormProps } from './form-props.ts';
import { rareRecords, type RareRecord } from './rare-records.ts';

/** The rarer records: one tap to the kind, one to the choice. */
export function MoreForm({ view, occupant, put, onClose, onForm }: FormProps) {
  const [title, setTitle] = useState<string>();
  const records = rareRecords(view, occupant);
  const chosen = records.find((record) => record.title === title);

  if (chosen) {
    return (
      <Sheet title={chosen.title} onClose={onClose}>
        {chosen.caution !== undefined && <p class="note note-warn small">{chosen.caution}</p>}
        {chosen.vet && <CallVet />}
        {chosen.choices && (
          <div class={chosen.choices.length > 8 ? 'three' : 'two'}>
            {chosen.choices.map(({ words, draft }) => (
              <Slab key={words} onPress={() => put(draft, words)}>
                {words}
              </Slab>
            ))}
          </div>
        )}
        {chosen.write && <TextLine record={chosen} occupantId={occupant.id} put={put} />}
      </Sheet>
    );
  }
  return (
    <Sheet title={`More for ${occupant.name}`} onClose={onClose}>
      <div class="two">
        <Slab icon="away" onPress={() => onForm('move')}>
          Move
        </Slab>
        {!view.pair && occupant.sex !== 'unknown' && (
          <Slab icon="pair" onPress={() => onForm('pair')}>
            Put together
          </Slab>
        )}
        {records.map((record) => (
          <Slab
            key={record.title}
            icon={record.icon}
            onPress={() => {
              const [only, second] = record.choices ?? [];
              // A single choice needs no second tap, unless it carries a caution.
              if (record.form) onForm(record.form);
              else if (only && !second && record.caution === undefined) put(only.draft, only.words);
              else setTitle(record.title);
            }}
          >
            {record.title}
          </Slab>
        ))}
      </div>
    </Sheet>
  );
}

function TextLine({
  record,
  occupantId,
  put,
}: {
  readonly record: RareRecord;
  readonly occupantId: string;
  readonly put: FormProps['put'];
}) {
  const [text, setText] = useDraft(`${record.title}.${occupantId}`);
  const draft = text.trim() === '' ? undefined : record.write?.(text.trim());
  return (
    <form
      class="stack"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        if (draft) put(draft, text.trim(), { after: () => setText('') });
      }}
    >
      <label>
        {record.prompt}
        <input
          value={text}
          maxLength={200}
          onInput={({ currentTarget }) => setText(currentTarget.value)}
        />
      </label>
      <button type="submit" class="slab slab-main" disabled={!draft}>
        Write
      </button>
    </form>
  );
}
