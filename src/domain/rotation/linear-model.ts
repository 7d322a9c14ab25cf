/** A sum of variables, each taken whole or not at all, that may not be more than a number. */
export interface Row {
  /** What it keeps, for whoever reads the model. */
  readonly keeps: string;
  readonly terms: readonly { readonly at: number; readonly times: number }[];
  readonly atMost: number;
}

/** Find the 0s and 1s that keep every row and make the sum of the worths greatest. */
export interface LinearModel {
  /** What each variable is worth. Whole numbers. */
  readonly worths: readonly number[];
  readonly rows: readonly Row[];
  /** Variables that are 1 in any case. */
  readonly fixed: readonly number[];
}

export interface Solved {
  /** 0 or 1 for each variable. */
  readonly values: readonly number[];
  /** The sum of the worths taken. */
  readonly worth: number;
  /** No plan can be worth more; equal to `worth` where the plan is proven best. */
  readonly atMost: number;
}

/** Errors: rejects where the solver cannot be loaded, or finds no plan at all. */
export type Solve = (model: LinearModel) => Promise<Solved>;

/** Whether nothing better exists: worths are whole, so a bound within less than one proves it. */
export const isProvenBest = ({ worth, atMost }: Pick<Solved, 'worth' | 'atMost'>): boolean =>
  atMost - worth < 1 - 1e-6;
