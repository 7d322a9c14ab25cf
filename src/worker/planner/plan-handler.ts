import { Fault } from '../../domain/core/fault.ts';
import type { Commands } from '../../domain/desk.ts';
import type { LinearModel, Solve, Solved } from '../../domain/rotation/linear-model.ts';
import type { Collection } from '../collection.ts';
import type { FromPlanner, ToPlanner } from './messages.ts';

/** So long without a plan asked for, and the solver's memory is given back. */
const IDLE_MS = 120_000;

/** Plans the rotation. The solver is started when the first plan is asked for. */
export function createPlanner(collection: Collection, solve: Solve = solverInWorker()) {
  return {
    async planVisits(): Promise<Commands['planVisits']['answer']> {
      const [{ planView }] = await Promise.all([
        import('../../domain/views/plan-view.ts'),
        // A reason given long ago counts as well.
        collection.readHistory(),
      ]);
      return planView(collection.picture, solve);
    },
  };
}

function solverInWorker(): Solve {
  let worker: Worker | undefined;
  let idle: number | undefined;
  let asked = 0;
  const waiting = new Map<number, (solved: Solved | undefined) => void>();

  function stop(): void {
    worker?.terminate();
    worker = undefined;
    for (const [id, settle] of waiting) {
      waiting.delete(id);
      settle(undefined);
    }
  }

  function start(): Worker {
    const started = new Worker(new URL('./planner.ts', import.meta.url), { type: 'module' });
    started.addEventListener('message', ({ data }: MessageEvent<FromPlanner>) => {
      const settle = waiting.get(data.id);
      waiting.delete(data.id);
      settle?.(data.solved);
    });
    started.addEventListener('error', stop);
    return started;
  }

  return async (model: LinearModel) => {
    clearTimeout(idle);
    worker ??= start();
    const running = worker;
    asked += 1;
    const id = asked;
    const solved = await new Promise<Solved | undefined>((settle) => {
      waiting.set(id, settle);
      running.postMessage({ id, model } satisfies ToPlanner);
    });
    idle = setTimeout(stop, IDLE_MS);
    if (!solved)
      throw new Fault('no-plan', 'No plan could be made.', 'Close the app and open it again.');
    return solved;
  };
}
