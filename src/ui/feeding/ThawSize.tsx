import { useState } from 'preact/hooks';
import type { ThawRow } from '../../domain/views/feeding-view.ts';
import { piecesWords, sizeName } from '../../domain/views/prey-words.ts';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { Unfolds } from '../components/Unfolds.tsx';
import { useModel } from '../model.ts';

/** One size of the thaw list: how many, why so many, and what becomes of them. */
export function ThawSize({
  row,
  leftHours,
}: {
  readonly row: ThawRow;
  readonly leftHours: number;
}) {
  const { kind, size, thaw, offered, because, inFreezer, thawed } = row;
  const more = Math.max(0, thaw - Math.max(0, thawed > 0 ? row.inHand - row.spoilt : 0));
  return (
    <article class="thaw note">
      <header class="thaw-head">
        <strong>{sizeName({ kind, size })}</strong>
        <span class="thaw-count number">{thawed > 0 ? thawed : thaw}</span>
        <span class="small quiet">{thawed > 0 ? 'taken out' : 'to take out'}</span>
      </header>
      {inFreezer !== undefined && thawed === 0 && inFreezer < thaw && (
        <p class="small">Only {inFreezer} in the freezer by your records.</p>
      )}
      {thawed > 0 && (
        <p class="small number">
          {row.given} eaten or in a tub, {row.binned} thrown out, {row.inHand} in hand
          {offered > 0 && `; ${offered} still due`}.
        </p>
      )}
      {because.length > 0 && (
        <Unfolds summary="Why so many">
          {() => (
            <div class="because">
              {because.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </div>
          )}
        </Unfolds>
      )}
      {more > 0 && <TakeOut key={more} row={row} more={more} />}
      {thawed > 0 && row.spoilt > 0 && row.inHand >= row.spoilt && (
        <p class="small">
          {piecesWords({ kind, size, pieces: row.spoilt })} refused in quarantine: for the bin, to
          no other snake.
        </p>
      )}
      {thawed > 0 && row.inHand > 0 && offered === 0 && (
        <Leftover row={row} leftHours={leftHours} />
      )}
    </article>
  );
}

function TakeOut({ row, more }: { readonly row: ThawRow; readonly more: number }) {
  const { write } = useModel();
  const { kind, size } = row;
  const [pieces, setPieces] = useState(more);
  return (
    <div class="thaw-take">
      <button
        type="button"
        class="pill"
        aria-label={`One ${sizeName(row)} less`}
        disabled={pieces <= 1}
        onClick={() => setPieces(pieces - 1)}
      >
        −
      </button>
      <Slab
        icon="out"
        kind="main"
        onPress={() =>
          void write({
            drafts: [{ type: 'prey-thawed', kind, size, pieces }],
            words: `${piecesWords({ kind, size, pieces })} taken out`,
          })
        }
      >
        {piecesWords({ kind, size, pieces })} out
      </Slab>
      <button
        type="button"
        class="pill"
        aria-label={`One ${sizeName(row)} more`}
        onClick={() => setPieces(pieces + 1)}
      >
        +
      </button>
    </div>
  );
}

/** What is left when all that are due have been offered: to another that takes that size, or into the bin. */
function Leftover({ row, leftHours }: { readonly row: ThawRow; readonly leftHours: number }) {
  const { write } = useModel();
  const { kind, size, inHand: pieces, next } = row;
  return (
    <div class="stack">
      {next.length > 0 && (
        <>
          <p class="small">The rest may go to one that is due soon:</p>
          <ul class="plain-list">
            {next.map(({ animal, name, position, words, inDays }) => (
              <li key={animal}>
                <a class="meal-line" href={`#/snake/${animal}`}>
                  <span class="plate">{position}</span>
                  <span class="stop-who">
                    <strong>{name}</strong>
                    <span class="small quiet">
                      {words}, due in {inDays === 1 ? '1 day' : `${inDays} days`}
                    </span>
                  </span>
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      <button
        type="button"
        class="pill"
        onClick={() =>
          void write({
            drafts: [
              { type: 'prey-thrown-out', kind, size, pieces, from: 'thawed', why: 'left over' },
            ],
            words: `${piecesWords({ kind, size, pieces })} thrown out`,
          })
        }
      >
        <Icon name="close" /> Into the bin: {piecesWords({ kind, size, pieces })}
      </button>
      <p class="small quiet">
        Thawed prey is binned within {leftHours} hours and never frozen again.
      </p>
    </div>
  );
}
