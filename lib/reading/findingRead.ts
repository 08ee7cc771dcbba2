import type { PartRef } from "../casebook/partRef";

/** How a finding was read. */
export type HowRead = "outright" | "phrase" | "words" | "believed";

/** A finding read from words. */
export type FindingRead = Readonly<{
  check: string;
  outcome: string;
  part: PartRef | undefined;
  /** The words it was read from. */
  from: string;
  span: readonly [number, number];
  absent: boolean;
  doubtful: boolean;
  /** By a phrase of the handbook, which is the rule; outright, by its id or a phrase that says all of it; or from the words alone, which is a guess; or as what somebody believes, which is no evidence. */
  how?: HowRead;
}>;
