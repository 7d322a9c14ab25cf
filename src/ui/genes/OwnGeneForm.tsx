import { useState } from 'preact/hooks';
import type { Draft } from '../../domain/events/event.ts';
import { useFields } from '../capture/use-fields.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';

type Made = Extract<Draft, { type: 'gene-made' }>;

const modes = [
  ['recessive', 'Hidden in one copy', 'recessive'],
  ['incomplete dominant', 'Shows, two look different', 'incomplete dominant, “co-dom”'],
  ['dominant', 'Shows, two look the same', 'dominant'],
] as const;

const LONGEST_ID = 40;

/** A name as an id that records may hold: "Silver Ash" becomes "own-silver-ash". */
const idOf = (name: string): string =>
  `own-${name
    .toLowerCase()
    .normalize('NFD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')}`.slice(0, LONGEST_ID);

/** A gene that the catalogue does not have, or the keeper knows better. */
export function OwnGeneForm({
  name: given,
  onClose,
}: {
  readonly name: string;
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const list = useView('geneList', null);
  const [fields, change, forget] = useFields('own-gene');
  const [neverHatch, setNeverHatch] = useState(false);
  const name = (fields['name'] ?? given).trim();
  const mode = modes.find(([each]) => each === fields['mode'])?.[0] ?? 'recessive';
  const own = list?.own.find((gene) => gene.name.toLowerCase() === name.toLowerCase());
  const allele = own?.allele ?? idOf(name);
  const field = (key: string) => fields[key]?.trim() ?? '';
  const draft: Made = {
    type: 'gene-made',
    locus: field('locus') || own?.locus || allele,
    allele,
    name,
    aliases: field('aliases')
      .split(',')
      .map((alias) => alias.trim())
      .filter((alias) => alias !== '')
      .slice(0, 12),
    mode,
    ...(field('two') === '' ? {} : { two: field('two') }),
    ...(neverHatch ? { twoNeverHatch: true } : {}),
    ...(field('remark') === '' ? {} : { remark: field('remark') }),
  };
  const line = (key: string, label: string, most = 60) => (
    <label>
      {label}
      <input
        value={key === 'name' ? (fields['name'] ?? given) : (fields[key] ?? '')}
        maxLength={most}
        autocomplete="off"
        onInput={({ currentTarget: { value } }) => change(key, () => value)}
      />
    </label>
  );
  return (
    <Sheet title="A gene of your own" onClose={onClose}>
      {line('name', 'What it is called')}
      {own && <p class="note small">You have this one: what you write now stands in for it.</p>}
      <div class="stack" role="group" aria-label="How it is passed on">
        {modes.map(([each, words, under]) => (
          <Slab
            key={each}
            pressed={mode === each}
            under={under}
            onPress={() => change('mode', () => each)}
          >
            {words}
          </Slab>
        ))}
      </div>
      {mode !== 'recessive' && line('two', 'What two copies are called, if anything')}
      <label class="tick">
        <input
          type="checkbox"
          checked={neverHatch}
          onChange={({ currentTarget }) => setNeverHatch(currentTarget.checked)}
        />
        Two copies were never seen to hatch
      </label>
      <label>
        Where it lies
        <select
          value={fields['locus'] ?? ''}
          onChange={({ currentTarget: { value } }) => change('locus', () => value)}
        >
          <option value="">By itself</option>
          {(list?.loci ?? []).map(({ id, name: locus, alleles }) => (
            <option key={id} value={id}>
              With {locus}
              {alleles.length > 1 ? `: ${alleles.map((each) => each.name).join(', ')}` : ''}
            </option>
          ))}
        </select>
      </label>
      {line('aliases', 'Other names, with commas', 200)}
      {line('remark', 'What is known of it', 200)}
      <Slab
        icon="check"
        kind="main"
        disabled={name === ''}
        under={name === '' ? undefined : `${name}, ${mode}`}
        onPress={() =>
          void write({
            drafts: [draft],
            words: `Gene ${name} kept`,
            after: () => {
              forget();
              onClose();
            },
          })
        }
      >
        Write
      </Slab>
      <p class="quiet small">It is shown as your own word wherever odds rest on it.</p>
    </Sheet>
  );
}
