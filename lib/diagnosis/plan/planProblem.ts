/** What could be the matter, with its probability; the probabilities are scaled to add up to 1. */
export type PlanState = Readonly<{ id: string; probability: number }>;

/** Work that opens the way to checks and tells nothing by itself. */
export type PlanOpener = Readonly<{
  id: string;
  /** Minutes at the bench, 0 or more. */
  minutes: number;
  /** Chance of harm times the minutes that the harm costs, 0 or more. */
  riskMinutes: number;
  /** Openers or checks that must be done first. */
  needs?: readonly string[];
}>;

/** Something that can be asked or tried once; asking it again would answer the same. */
export type PlanCheck = PlanOpener &
  Readonly<{
    /** P(outcome | state) in the states' order; over the outcomes each state's add up to 1. */
    outcomes: readonly Readonly<{ id: string; likelihoods: readonly number[] }>[];
  }>;

/** Something that ends the plan: a repair, or naming the state. */
export type PlanRepair = Readonly<{
  id: string;
  minutes: number;
  riskMinutes: number;
  /** P(mended | state), in the states' order. */
  mends: readonly number[];
  /** What it costs beyond the repair when the state is not mended by it, in minutes, in the states' order; Infinity forbids it. */
  failureMinutes: readonly number[];
}>;

/** States of which one holds, checks that tell them apart, and repairs to choose from: nothing in it is about instruments. */
export type PlanProblem = Readonly<{
  states: readonly PlanState[];
  checks: readonly PlanCheck[];
  openers?: readonly PlanOpener[];
  repairs: readonly PlanRepair[];
}>;
