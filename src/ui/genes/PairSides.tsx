import { useState } from 'preact/hooks';
import type { AnimalId } from '../../domain/core/ids.ts';
import type { PairView, SideLine } from '../../domain/views/pair-view.ts';
import { SexMark } from '../components/SexMark.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { goInstead } from '../route.ts';
import { writePairRoute, type PairRoute } from './pair-route.ts';
import { ReadingNotes } from './ReadingNotes.tsx';
import { SnakePick } from './SnakePick.tsx';

/** Whom a pick is for: the female, a male in place of one that is there, or one more. */
type Picking = { readonly sex: 'female' } | { readonly sex: 'male'; readonly at: number };

const MOST_MALES = 4;

/** The two, or the several, and how to change them. */
export function PairSides({
  route,
  view,
  words,
  onFemale,
  onMale,
}: {
  readonly route: PairRoute;
  readonly view: PairView | undefined;
  readonly words: { readonly female: string; readonly male: string };
  readonly onFemale: (text: string) => void;
  readonly onMale: (text: string) => void;
}) {
  const [picking, setPicking] = useState<Picking>();
  const { female, males } = route;
  const to = (next: PairRoute) => {
    setPicking(undefined);
    goInstead(writePairRoute(next));
  };
  const put = (id: AnimalId | undefined) => {
    if (picking?.sex === 'female') to({ female: id, males });
    else if (picking)
      to({ female, males: [...males.slice(0, picking.at), id, ...males.slice(picking.at + 1)] });
  };
  return (
    <div class="sides">
      <Side
        sex="female"
        id={female}
        line={view?.female}
        words={words.female}
        onWords={onFemale}
        onChange={() => setPicking({ sex: 'female' })}
      />
      {males.map((male, at) => (
        <Side
          key={male ?? 'words'}
          sex="male"
          id={male}
          line={view?.males[at]}
          words={words.male}
          onWords={onMale}
          onChange={() => setPicking({ sex: 'male', at })}
          onRemove={
            males.length > 1
              ? () => to({ female, males: males.filter((_, n) => n !== at) })
              : undefined
          }
        />
      ))}
      <div class="chips">
        {males.length === 0 ? (
          <button type="button" class="pill" onClick={() => to({ female, males: [undefined] })}>
            With a male
          </button>
        ) : (
          <>
            {males.length < MOST_MALES && males.every((male) => male !== undefined) && (
              <button
                type="button"
                class="pill"
                onClick={() => setPicking({ sex: 'male', at: males.length })}
              >
                Or another male
              </button>
            )}
            <button type="button" class="pill" onClick={() => to({ female, males: [] })}>
              Without a male
            </button>
          </>
        )}
      </div>
      {picking && (
        <Sheet title={`Which ${picking.sex}`} onClose={() => setPicking(undefined)}>
          <SnakePick
            label={`Name or position of the ${picking.sex}`}
            sex={picking.sex}
            without={males.filter((male) => male !== undefined)}
            onPick={put}
          />
          {(picking.sex === 'female' || males.length < 2) && (
            <Slab onPress={() => put(undefined)}>An imagined one, in words</Slab>
          )}
        </Sheet>
      )}
    </div>
  );
}

const Side = ({
  sex,
  id,
  line,
  words,
  onWords,
  onChange,
  onRemove,
}: {
  readonly sex: 'female' | 'male';
  readonly id: AnimalId | undefined;
  readonly line: SideLine | undefined;
  readonly words: string;
  readonly onWords: (text: string) => void;
  readonly onChange: () => void;
  readonly onRemove?: (() => void) | undefined;
}) => (
  <div class="side">
    <div class="side-head">
      {id === undefined ? (
        <span>
          An imagined {sex} <SexMark sex={sex} />
        </span>
      ) : (
        <a href={`#/animal/${id}`}>
          {line?.who?.name ?? '…'} <SexMark sex={sex} />
        </a>
      )}
      <span class="chips">
        <button type="button" class="pill" onClick={onChange}>
          Change<span class="hidden-words"> the {sex}</span>
        </button>
        {onRemove && (
          <button type="button" class="pill" onClick={onRemove}>
            Not he
          </button>
        )}
      </span>
    </div>
    {id === undefined ? (
      <label>
        Genes of the {sex}
        <input
          value={words}
          maxLength={300}
          autocomplete="off"
          autocapitalize="off"
          onInput={({ currentTarget }) => onWords(currentTarget.value)}
        />
      </label>
    ) : (
      <p class="small quiet">{line?.traits ?? 'nothing stated'}</p>
    )}
    {line?.reading && <ReadingNotes reading={line.reading} />}
  </div>
);
