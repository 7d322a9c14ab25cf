import type { AnimalId, BuyerId } from '../core/ids.ts';
import type { Result } from '../core/result.ts';
import type { FileLike } from '../file-like.ts';
import type { Span } from '../register/tables.ts';
import type { Buyer } from '../sale/buyer.ts';
import type { PapersView } from './papers-view.ts';
import type { RegisterView } from './register-view.ts';
import type { SalesView } from './sales-view.ts';

// The desk's words about sales, a part of those in `desk.ts`.

export interface SaleViews {
  readonly sales: { readonly ask: null; readonly view: SalesView };
  /** The sale of one animal, and all that goes on its papers. */
  readonly papers: { readonly ask: AnimalId; readonly view: PapersView | undefined };
  readonly register: { readonly ask: Span; readonly view: RegisterView };
}

export interface SaleCommands {
  /** Buyers on this device, by name. They are in no record and in no backup. */
  readonly buyers: { readonly ask: null; readonly answer: readonly Buyer[] };
  readonly keepBuyer: {
    readonly ask: {
      readonly name: string;
      readonly contact?: string | undefined;
    };
    readonly answer: Result<BuyerId>;
  };
  /** For good, on this device. Records keep the number, which names nobody any more. */
  readonly eraseBuyer: { readonly ask: BuyerId; readonly answer: null };
  /** The buyers as a file of their own. */
  readonly buyersFile: {
    readonly ask: null;
    readonly answer: { readonly fileName: string; readonly text: string };
  };
  /** Adds the buyers of such a file; the answer is how many were new. */
  readonly takeInBuyers: { readonly ask: FileLike; readonly answer: Result<number> };
  /** A register as CSV. Buyers are in it only where the keeper says so. */
  readonly registerFile: {
    readonly ask: {
      readonly span: Span;
      readonly of: 'animals' | 'sales';
      readonly withBuyers: boolean;
    };
    readonly answer: { readonly fileName: string; readonly text: string };
  };
}
