import type { CautionLine } from '../../domain/views/caution-words.ts';

/** What speaks against a pair: how much it weighs, how well it is known and from where, in sight. */
export const CautionList = ({ cautions }: { readonly cautions: readonly CautionLine[] }) => (
  <ul class="stack" aria-label="Cautions">
    {cautions.map(({ id, weight, says, chance, grade, evidence }) => (
      <li class="caution" key={id}>
        <p>
          <b>{weight}</b>: {says}
        </p>
        <p class="small number">{chance}</p>
        <p class="small quiet">
          Known from: {grade}. {evidence.slice(1).join(' ') || evidence.join(' ')}
        </p>
      </li>
    ))}
  </ul>
);
