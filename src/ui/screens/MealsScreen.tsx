import { useState } from 'preact/hooks';
import type { RackId } from '../../domain/core/ids.ts';
import type { RowMeal } from '../../domain/views/racks-view.ts';
import { Icon } from '../components/Icon.tsx';
import { Slab } from '../components/Slab.tsx';
import { useModel, useView } from '../model.ts';
import { Page } from './Page.tsx';

type Said = 'ate' | 'refused' | 'left' | 'not offered';

/** One tap more each time: the usual exceptions in the order they happen. */
const NEXT: Record<Said, Said> = {
  ate: 'refused',
  refused: 'left',
  left: 'not offered',
  'not offered': 'ate',
};

const saidWords: Record<Said, string> = {
  ate: 'ate',
  refused: 'refused',
  left: 'left overnight',
  'not offered': 'not offered',
};

/** A rack's or a row's meals at once: all ate as planned, except those tapped. */
export function MealsScreen({ id }: { readonly id: RackId }) {
  const meals = useView('meals', id);
  const [picked, setRow] = useState<number>();
  const rows = [...new Set(meals?.map((meal) => meal.row))];
  const row = rowOn(picked, rows);
  const shown = (meals ?? []).filter((meal) => row === undefined || meal.row === row);
  return (
    <Page title="Meals of the rack" back>
      {rows.length > 1 && (
        <div class="chips" role="group" aria-label="Which row">
          <button
            type="button"
            class="pill"
            aria-pressed={row === undefined}
            onClick={() => setRow(undefined)}
          >
            All rows
          </button>
          {rows.map((each) => (
            <button
              type="button"
              key={each}
              class="pill"
              aria-pressed={row === each}
              onClick={() => setRow(each)}
            >
              Row {each}
            </button>
          ))}
        </div>
      )}
      {meals && shown.length === 0 && <p class="note">No meal is due here tonight.</p>}
      {shown.length > 0 && <MealTable meals={shown} key={row ?? 'all'} />}
    </Page>
  );
}

/** Once a row is written, the next one with a meal due stands there: never all the rest at once. */
function rowOn(picked: number | undefined, rows: readonly number[]): number | undefined {
  if (picked === undefined || rows.length === 0 || rows.includes(picked)) return picked;
  return rows.find((row) => row > picked) ?? rows[0];
}

function MealTable({ meals }: { readonly meals: readonly RowMeal[] }) {
  const { write } = useModel();
  const [said, setSaid] = useState<Readonly<Record<string, Said>>>({});
  const of = (meal: RowMeal): Said => said[meal.animal] ?? 'ate';
  const offered = meals.filter((meal) => of(meal) !== 'not offered');
  const exceptions = offered.filter((meal) => of(meal) !== 'ate').length;

  const save = () =>
    void write({
      drafts: offered.flatMap((meal) => {
        const outcome = of(meal);
        return outcome === 'not offered'
          ? []
          : [{ type: 'meal-offered', animal: meal.animal, prey: meal.prey, outcome } as const];
      }),
      words: `${offered.length} meals written${exceptions > 0 ? `, ${exceptions} exceptions` : ''}`,
      after: () => setSaid({}),
    });

  return (
    <>
      <p class="quiet small">All ate as planned, except those you tap.</p>
      <ul class="plain-list">
        {meals.map((meal) => (
          <li key={meal.animal}>
            <button
              type="button"
              class={`meal-line${of(meal) === 'ate' ? '' : ' meal-other'}`}
              onClick={() => setSaid({ ...said, [meal.animal]: NEXT[of(meal)] })}
            >
              <span class="plate">{meal.position}</span>
              <span class="stop-who">
                <strong>{meal.name}</strong>
                <span class="small quiet">{meal.words}</span>
              </span>
              <span class="said">
                <Icon
                  name={of(meal) === 'ate' ? 'check' : of(meal) === 'left' ? 'overnight' : 'refuse'}
                />
                {saidWords[of(meal)]}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <div class="page-hand">
        <Slab icon="check" kind="main" disabled={offered.length === 0} onPress={save}>
          Write {offered.length} {offered.length === 1 ? 'meal' : 'meals'}
        </Slab>
      </div>
    </>
  );
}
