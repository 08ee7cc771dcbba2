import { riskMinutes } from "../../diagnosis/riskMinutes";
import type { WalkedCheck } from "./walkStudy";

/** What some checks cost. */
export type PathCost = Readonly<{
  minutes: number;
  /** The minutes to reckon for what was put at stake, see `riskMinutes`. */
  riskMinutes: number;
  /** How many checks there were of each risk class, 0 to 4. */
  byRisk: readonly number[];
}>;

const riskClasses = [0, 1, 2, 3, 4];

/** Adds up what some checks cost in minutes and in risk; zeros for none. */
export function pathCost(checks: readonly Pick<WalkedCheck, "minutes" | "riskClass">[]): PathCost {
  return {
    minutes: checks.reduce((sum, { minutes }) => sum + minutes, 0),
    riskMinutes: checks.reduce((sum, { riskClass }) => sum + riskMinutes(riskClass), 0),
    byRisk: riskClasses.map((risk) => checks.filter(({ riskClass }) => riskClass === risk).length),
  };
}
