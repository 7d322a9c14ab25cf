import wasmUrl from 'highs/runtime?url';
import { highsSolver } from './highs-solver.ts';
import type { FromPlanner, ToPlanner } from './messages.ts';

declare const self: DedicatedWorkerGlobalScope;

// A worker of its own: a plan may take a second, and the desk must hear a tap meanwhile.

const solve = highsSolver(wasmUrl);
const answer = (message: FromPlanner): void => self.postMessage(message);

self.addEventListener('message', ({ data: { id, model } }: MessageEvent<ToPlanner>) => {
  solve(model).then(
    (solved) => answer({ id, solved }),
    () => answer({ id, solved: undefined }),
  );
});
