import type { Commands, Views } from '../domain/desk.ts';

/** What the page sends: a command, a view to watch, or one to stop watching. */
export type ToDesk =
  | {
      readonly [Kind in keyof Commands]: {
        readonly is: 'tell';
        readonly id: number;
        readonly kind: Kind;
        readonly ask: Commands[Kind]['ask'];
      };
    }[keyof Commands]
  | {
      readonly [Kind in keyof Views]: {
        readonly is: 'watch';
        readonly id: number;
        readonly kind: Kind;
        readonly ask: Views[Kind]['ask'];
      };
    }[keyof Views]
  | { readonly is: 'unwatch'; readonly id: number };

/** What comes back. A Fault crosses as its words, since classes do not survive the crossing. */
export type FromDesk =
  | { readonly is: 'answer'; readonly id: number; readonly answer: unknown }
  | { readonly is: 'fault'; readonly id: number; readonly message: string; readonly remedy: string }
  | { readonly is: 'view'; readonly id: number; readonly view: unknown };
