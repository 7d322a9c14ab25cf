import type { LinearModel, Solved } from '../../domain/rotation/linear-model.ts';

/** From the desk to the planner, one at a time. */
export interface ToPlanner {
  readonly id: number;
  readonly model: LinearModel;
}

/** Back again; without a solution where none was found. */
export interface FromPlanner {
  readonly id: number;
  readonly solved: Solved | undefined;
}
