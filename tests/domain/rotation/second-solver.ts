import loadGlpk from 'glpk.js/node';
import type { LinearModel } from '../../../src/domain/rotation/linear-model.ts';

/** The greatest worth of a model by GLPK, which shares nothing with the solver the app uses. */
export async function greatestWorth({ worths, rows, fixed }: LinearModel): Promise<number> {
  if (worths.length === 0) return 0;
  const glpk = await loadGlpk();
  const name = (at: number): string => `v${at}`;
  const { result } = glpk.solve(
    {
      name: 'plan',
      objective: {
        direction: glpk.GLP_MAX,
        name: 'worth',
        vars: worths.map((coef, at) => ({ name: name(at), coef })),
      },
      subjectTo: [
        ...rows.map(({ terms, atMost }, i) => ({
          name: `r${i}`,
          vars: terms.map(({ at, times }) => ({ name: name(at), coef: times })),
          bnds: { type: glpk.GLP_UP, ub: atMost, lb: 0 },
        })),
        ...fixed.map((at) => ({
          name: `f${at}`,
          vars: [{ name: name(at), coef: 1 }],
          bnds: { type: glpk.GLP_FX, ub: 1, lb: 1 },
        })),
      ],
      binaries: worths.map((_, at) => name(at)),
    },
    { msglev: glpk.GLP_MSG_OFF, presol: true, mipgap: 0, tmlim: 60 },
  );
  if (result.status !== glpk.GLP_OPT) throw new Error(`The second solver says ${result.status}.`);
  return result.z;
}
