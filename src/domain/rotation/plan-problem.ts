import type { AnimalId } from '../core/ids.ts';

/** Nights counted from tonight, which is 0; those before it are negative. */
export type Night = number;

/** The numbers of the keeper's protocol that a plan must keep. All in whole nights. */
export interface PlanLimits {
  /** How far the plan reaches. */
  readonly nights: number;
  /** A male stays so many nights; fewer only where nobody is there to fetch him, or by a pin. */
  readonly stayNights: number;
  /** From a meal of either to the evening he goes in. */
  readonly mealToPairingNights: number;
  /** From the end of one of her visits to the next. */
  readonly betweenVisitsNights: number;
}

/** What holds for a snake of either sex. */
export interface PlanSnake {
  readonly id: AnimalId;
  /** The last night it ate, tonight or before. */
  readonly ate?: Night | undefined;
  /** The night a meal is due, not before tonight. It is expected to be given and eaten then. */
  readonly mealDue?: Night | undefined;
  /** In blue: the first night that it no longer stands against a visit. */
  readonly clearFrom?: Night | undefined;
  /** It stays by itself for the whole plan: quarantine, illness. A sentence. */
  readonly apart?: string | undefined;
}

export interface PlanMale extends PlanSnake {
  /** The night he came home from his last visit. */
  readonly cameHome?: Night | undefined;
  /** Nights he rests at home after a visit, as his mass allows. */
  readonly restNights: number;
  /** Why he is not used at all: too much mass lost. A sentence. */
  readonly stopped?: string | undefined;
  /** The share of the mass at which he is stopped that he has lost: 0 none, 1 all of it. */
  readonly lossOfStop: number;
  /** Visits begun in the last four weeks. */
  readonly lateVisits: number;
  /** Females he has visited this season. */
  readonly had: readonly AnimalId[];
  /** Most females in one season. */
  readonly mostFemales: number;
}

export interface PlanFemale extends PlanSnake {
  /** Nights on which a male may be with her: from the first, before the second. */
  readonly window?: { readonly from: Night; readonly before: Night } | undefined;
  /** Why there is none. A sentence. */
  readonly closed?: string | undefined;
  /** The night her last visit ended. */
  readonly visitEnded?: Night | undefined;
  /** Nights by which a visit is overdue tonight; 0 where it is not. */
  readonly overdueNights: number;
  /** How soon her window may close: 1 not soon, 2 soon, 3 very soon. */
  readonly haste: 1 | 2 | 3;
}

export interface WantedPair {
  readonly male: AnimalId;
  readonly female: AnimalId;
  /** 0 is the first choice, then the reserves in order. */
  readonly choice: number;
  /** What asks for the keeper's recorded reason, and has none. Sentences. */
  readonly unreasoned: readonly string[];
  /** The keeper does not want these two together now. */
  readonly barred: boolean;
}

/** He goes in on one evening and comes out on another. */
export interface Visit {
  readonly male: AnimalId;
  readonly female: AnimalId;
  readonly in: Night;
  readonly out: Night;
}

/** A visit that has begun. `out` is the evening he is to come out. */
export type StayUnderWay = Visit;

export interface PlanProblem {
  readonly limits: PlanLimits;
  readonly males: readonly PlanMale[];
  readonly females: readonly PlanFemale[];
  readonly wanted: readonly WantedPair[];
  readonly underWay: readonly StayUnderWay[];
  /** Visits the keeper has pinned. */
  readonly pins: readonly Visit[];
  /** Evenings on which nobody is there to move a male. */
  readonly away: readonly Night[];
  /** The plan that was kept last: of two equal plans the one that changes less is better. */
  readonly kept: readonly Visit[];
}
