import type { PartRef } from "../casebook/partRef";

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
}>;
