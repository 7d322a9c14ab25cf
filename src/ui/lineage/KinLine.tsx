import type { KinWords } from '../../domain/views/kin-words.ts';
import { Unfolds } from '../components/Unfolds.tsx';

/** How closely bred, with what that rests on. */
export const KinLine = ({
  kin: { figure, rests, closeness },
  limits,
}: {
  readonly kin: KinWords;
  readonly limits: string;
}) => (
  <div class={closeness === undefined ? 'kin' : 'kin kin-close'}>
    <strong class="number">{figure}</strong>
    {closeness !== undefined && <b>{closeness}</b>}
    <p class="small">{rests.join(' ')}</p>
    <Unfolds summary="What this is">
      {() => (
        <div class="because">
          <p>
            F is the chance that the two copies of a gene come from one and the same copy of an
            ancestor. Full siblings have young of F 1/4, half siblings of 1/8, cousins of 1/16.
          </p>
          <p>Nothing is counted through ancestors who are not known, so it can only be more.</p>
          <p>{limits}</p>
          <p>Wright S. 1922, Am Nat 56:330–338.</p>
        </div>
      )}
    </Unfolds>
  </div>
);
