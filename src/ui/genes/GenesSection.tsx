import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { GeneLine, GenesView } from '../../domain/views/genes-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useView } from '../model.ts';
import { GeneForms, type GeneForm } from './GeneForms.tsx';
import './genes.css';
import { GeneWhy, Troubles } from './GeneWhy.tsx';
import { ReadingNotes } from './ReadingNotes.tsx';
import { Share } from './Share.tsx';

/** What one snake carries, by all records, and the forms that say more of it. */
export function GenesSection({ id }: { readonly id: AnimalId }) {
  const view = useView('genes', id);
  const [form, setForm] = useState<GeneForm>();
  if (!view) return null;
  const { self, stated, reading, lines, troubles, faults, leftOut } = view;
  const other = self.sex === 'male' ? `words/${id}` : `${id}/words`;
  return (
    <section class="stack">
      <h2>Genes</h2>
      <p>{stated === undefined ? 'Nothing is stated of its genes.' : `Stated: ${stated}`}</p>
      {reading && (
        <ReadingNotes reading={reading} onOwn={(words) => setForm({ kind: 'own', name: words })} />
      )}
      {faults.map((message) => (
        <p class="note note-warn small" key={message}>
          {message} These parents are left out. <a href={`#/lineage/${id}`}>See the lineage</a>
        </p>
      ))}
      <Troubles troubles={troubles} />
      {leftOut.map(({ name, because }) => (
        <p class="note small" key={name}>
          Your gene {name} cannot be used: {because}
        </p>
      ))}
      <Lines id={id} lines={lines} />
      <Buttons view={view} onForm={setForm} />
      {self.sex !== 'unknown' && (
        <a class="row-link" href={`#/pair/${other}`}>
          <Icon name="eggs" /> What would the young be, with …
        </a>
      )}
      {form && <GeneForms form={form} of={self} lines={lines} onClose={() => setForm(undefined)} />}
    </section>
  );
}

function Lines({ id, lines }: { readonly id: AnimalId; readonly lines: readonly GeneLine[] }) {
  if (lines.length === 0) return <p class="quiet">By the records a normal, as far as is known.</p>;
  return (
    <ul class="gene-lines" aria-label="What it carries">
      {lines.map((line) => (
        <li key={`${line.locus}.${line.allele}`}>
          <p class="gene-head">
            <strong>{line.name}</strong>
            <span class="number">{line.now}</span>
          </p>
          {line.isOpen && <Share share={line.chance} />}
          <p class="small quiet number">
            {line.hasMoved || line.isOpen ? `${line.before} ${line.since}` : line.since}
            {line.isOpen && !line.hasMoved && ', not moved since'}
          </p>
          <Unfolds summary={line.isOpen ? `Why, and what would prove it` : 'Why'}>
            {() => <GeneWhy animal={id} locus={line.locus} allele={line.allele} />}
          </Unfolds>
        </li>
      ))}
    </ul>
  );
}

const Buttons = ({
  view: { self },
  onForm,
}: {
  readonly view: GenesView;
  readonly onForm: (form: GeneForm) => void;
}) => (
  <div class="chips" role="group" aria-label="Say more of its genes">
    <button type="button" class="pill" onClick={() => onForm({ kind: 'traits' })}>
      State its genes
    </button>
    <button type="button" class="pill" onClick={() => onForm({ kind: 'parents' })}>
      State its parents
    </button>
    <button type="button" class="pill" onClick={() => onForm({ kind: 'test' })}>
      DNA result
    </button>
    {self.sex === 'female' && (
      <button type="button" class="pill" onClick={() => onForm({ kind: 'young' })}>
        Count her young
      </button>
    )}
    <button type="button" class="pill" onClick={() => onForm({ kind: 'own' })}>
      A gene of your own
    </button>
  </div>
);
