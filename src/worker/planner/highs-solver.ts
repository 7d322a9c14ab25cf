import loadHighs from 'highs';
import type { LinearModel, Solve, Solved } from '../../domain/rotation/linear-model.ts';
import { lpText } from './lp-text.ts';

/** A plan that is not proven best after so long is told with its gap. */
const MOST_SECONDS = 8;

/** HiGHS as the solver of plans. `wasmUrl`: where its program lies; left out, beside the package. */
export function highsSolver(wasmUrl?: string): Solve {
  const loaded = loadHighs(wasmUrl === undefined ? {} : { locateFile: () => wasmUrl });
  return async (model) => {
    // Nothing is possible: nothing is planned, and no solver takes a model without variables.
    if (model.worths.length === 0) return { values: [], worth: 0, atMost: 0 };
    const highs = await loaded;
    return highs.withModel({ format: 'lp', data: lpText(model) }, (highsModel): Solved => {
      highsModel.options.set({ output_flag: false, mip_rel_gap: 0, time_limit: MOST_SECONDS });
      highsModel.run();
      const values = [...highsModel.getSolution().colValue].map((value) => Math.round(value));
      // 2: a solution that keeps every row, proven best or not.
      if (highsModel.info.get('primal_solution_status') !== 2)
        throw new Error('No plan was found.');
      return {
        values,
        ...worthAndBound(model, values, Number(highsModel.info.get('mip_dual_bound'))),
      };
    });
  };
}

/** The worth is added up here, in whole numbers; the bound is the solver's. */
function worthAndBound(
  { worths }: LinearModel,
  values: readonly number[],
  bound: number,
): Pick<Solved, 'worth' | 'atMost'> {
  const worth = worths.reduce((sum, each, at) => sum + each * (values[at] ?? 0), 0);
  return { worth, atMost: Math.max(worth, bound) };
}
