import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { GeneLine } from '../../domain/views/genes-view.ts';
import { useFields } from '../capture/use-fields.ts';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel, useView } from '../model.ts';

const rates = [
  ['sensitivity', 'Found in carriers, %'],
  ['specificity', 'Not found in others, %'],
] as const;

/** A share from a percentage as typed; undefined where it is none. */
function shareIn(typed: string | undefined): number | undefined {
  const value = Number((typed ?? '').replace(',', '.'));
  return typed === undefined || !(value >= 0 && value <= 100) ? undefined : value / 100;
}

/** What a laboratory found: the gene, and found or not. */
export function GeneTestForm({
  id,
  name,
  lines = [],
  onClose,
}: {
  readonly id: AnimalId;
  readonly name: string;
  /** What it may carry: the likelier choices. */
  readonly lines?: readonly GeneLine[];
  readonly onClose: () => void;
}) {
  const { write } = useModel();
  const list = useView('geneList', null);
  const [fields, change, forget] = useFields(`gene-test.${id}`);
  const open = lines.filter(({ isOpen }) => isOpen);
  const [picked, setPicked] = useState<string>();
  const first = open[0] && `${open[0].locus} ${open[0].allele}`;
  const gene = picked ?? first ?? '';
  const [locus, allele] = gene.split(' ');
  const choices = (list?.loci ?? []).flatMap((each) =>
    each.alleles.map((of) => ({ value: `${each.id} ${of.id}`, words: of.name })),
  );
  const words = choices.find(({ value }) => value === gene)?.words ?? '';
  const put = (result: 'found' | 'not found') => {
    if (locus === undefined || allele === undefined) return;
    const told = Object.fromEntries(
      rates.flatMap(([rate]) => {
        const share = shareIn(fields[rate]);
        return share === undefined ? [] : [[rate, share]];
      }),
    );
    const lab = fields['lab']?.trim();
    void write({
      drafts: [
        {
          type: 'gene-tested',
          animal: id,
          locus,
          allele,
          result,
          ...told,
          ...(lab ? { lab } : {}),
        },
      ],
      words: `${name}: ${words} ${result}`,
      after: () => {
        forget();
        onClose();
      },
    });
  };
  return (
    <Sheet title={`DNA result of ${name}`} onClose={onClose}>
      <label>
        Tested for
        <select value={gene} onChange={({ currentTarget }) => setPicked(currentTarget.value)}>
          <option value="">Choose a gene</option>
          {choices
            .toSorted((a, b) => (a.words < b.words ? -1 : 1))
            .map(({ value, words: option }) => (
              <option key={value} value={value}>
                {option}
              </option>
            ))}
        </select>
      </label>
      <Unfolds summary="What the laboratory states">
        {() => (
          <div class="stack">
            <label>
              Laboratory
              <input
                value={fields['lab'] ?? ''}
                maxLength={120}
                autocomplete="off"
                onInput={({ currentTarget: { value } }) => change('lab', () => value)}
              />
            </label>
            <div class="field-row">
              {rates.map(([rate, label]) => (
                <label key={rate}>
                  {label}
                  <input
                    value={fields[rate] ?? ''}
                    inputMode="decimal"
                    autocomplete="off"
                    onInput={({ currentTarget: { value } }) =>
                      change(rate, () => (value === '' ? undefined : value))
                    }
                  />
                </label>
              ))}
            </div>
            <p class="quiet small">Left empty: 99 % each is assumed, no source.</p>
          </div>
        )}
      </Unfolds>
      <div class="two">
        {(['found', 'not found'] as const).map((result) => (
          <Slab
            key={result}
            kind="main"
            disabled={gene === ''}
            under={words}
            onPress={() => put(result)}
          >
            {result === 'found' ? 'Found' : 'Not found'}
          </Slab>
        ))}
      </div>
    </Sheet>
  );
}
