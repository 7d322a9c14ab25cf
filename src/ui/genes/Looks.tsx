import type { LookLine } from '../../domain/views/look-lines.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { Share } from './Share.tsx';

/** What the young look like: each look with its chance as a bar, and all of it as a table. */
export function Looks({
  looks,
  rarer,
  young,
}: {
  readonly looks: readonly LookLine[];
  readonly rarer: string | undefined;
  readonly young: number;
}) {
  if (looks.length === 0) return <p class="note note-warn">Nothing of this pair hatches.</p>;
  return (
    <section class="stack">
      <h2>Looks of the young</h2>
      <ol class="looks" aria-label="Looks, the likeliest first">
        {looks.map((look) => (
          <li class="look" key={look.name}>
            <p class="look-head">
              <strong>{look.name}</strong>
              <span class="number">{look.chance}</span>
            </p>
            <Share share={look.share} />
            <Unfolds summary={`${look.expected} in ${young} on average`}>
              {() => (
                <div class="because">
                  {look.writes.map((text) => (
                    <p key={text}>Written: {text}.</p>
                  ))}
                  {look.odds.map((line) => (
                    <p key={line}>{line}</p>
                  ))}
                </div>
              )}
            </Unfolds>
          </li>
        ))}
      </ol>
      {rarer !== undefined && <p class="small">{rarer}</p>}
      <Unfolds summary="The same as a table">
        {() => (
          <div class="look-table">
            <table class="numbers">
              <thead>
                <tr>
                  <th scope="col">Look</th>
                  <th scope="col">Chance</th>
                  <th scope="col">In {young}</th>
                  <th scope="col">Written</th>
                </tr>
              </thead>
              <tbody>
                {looks.map((look) => (
                  <tr key={look.name}>
                    <th scope="row" class="small">
                      {look.name}
                    </th>
                    <td class="small">{look.chance}</td>
                    <td class="small">{look.expected}</td>
                    <td class="small">{look.writes.join('; ')}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        )}
      </Unfolds>
    </section>
  );
}
