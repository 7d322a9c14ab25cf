import type { GeneAsk, GeneWhyView, ProofLine } from '../../domain/views/gene-why-view.ts';
import type { FindingLine, TroubleLine } from '../../domain/views/gene-findings.ts';
import { useView } from '../model.ts';
import { dateWords } from '../../domain/core/day-words.ts';

/** Which records made a chance what it is, and how many young of whom would settle it. */
export function GeneWhy(ask: GeneAsk) {
  const view = useView('geneWhy', ask);
  if (!view) return <p aria-busy="true">Looking through the records…</p>;
  const { trouble, gene, start, movers, now, proof } = view;
  if (trouble) return <Troubles troubles={[trouble]} />;
  return (
    <div class="because">
      <p>
        {gene} by descent and by what was stated of bought ancestors: <b>{start}</b>.
      </p>
      {movers.length === 0 && <p>No record has moved it since.</p>}
      {movers.length > 0 && (
        <>
          <p>What moved it, the strongest first:</p>
          <ul class="gene-movers">
            {movers.map((mover) => (
              <li key={`${mover.of.id}${mover.says}${mover.night ?? ''}`}>
                <Finding line={mover} />
                <span>
                  Without it: <b>{mover.without}</b>
                </span>
              </li>
            ))}
          </ul>
          <p>
            All together: <b>{now}</b>.
          </p>
        </>
      )}
      {proof && <WhatWouldProve proof={proof} />}
      <p>
        Reckoned exactly over all parents on record. Taken for true: parents as stated, bought
        animals not related, young counted by chance and not picked.
      </p>
    </div>
  );
}

const WhatWouldProve = ({
  proof: { lines, because },
}: {
  readonly proof: NonNullable<GeneWhyView['proof']>;
}) => (
  <>
    <h3>What would prove it?</h3>
    {because !== undefined && <p>{because}</p>}
    {lines.map((line) => (
      <Proof key={line.mate?.id ?? 'any'} line={line} />
    ))}
  </>
);

const Proof = ({ line: { mate, mateHas, says } }: { readonly line: ProofLine }) => (
  <div class="gene-proof">
    <p>
      <b>
        With {mate ? <a href={`#/animal/${mate.id}`}>{mate.name}</a> : mateHas}
        {mate && `, who ${mateHas}`}
      </b>
    </p>
    {says.map((sentence) => (
      <p key={sentence}>{sentence}</p>
    ))}
  </div>
);

const Finding = ({ line: { of, says, night } }: { readonly line: FindingLine }) => (
  <>
    <a href={`#/animal/${of.id}`}>{of.name}</a>
    <span>
      {says}
      {night !== undefined && <span class="number">, {dateWords(night)}</span>}
    </span>
  </>
);

/** Records that cannot all be true, with the way to each. */
export const Troubles = ({ troubles }: { readonly troubles: readonly TroubleLine[] }) => (
  <>
    {troubles.map(({ gene, says, records }) => (
      <div class="note note-warn small" key={gene}>
        <p>{says}</p>
        <ul class="gene-movers">
          {records.map((record) => (
            <li key={`${record.of.id}${record.says}`}>
              <Finding line={record} />
            </li>
          ))}
        </ul>
      </div>
    ))}
  </>
);
