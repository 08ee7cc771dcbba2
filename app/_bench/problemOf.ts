import type { ProblemInput } from "@/lib/consult/problem";
import type { BenchQuery } from "./benchQuery";
import { swapInput } from "./swapInput";

/** Tells whether there is anything on the bench to ask about. */
export const isBare = ({ says, findings, swaps }: BenchQuery) =>
  says.trim() === "" && findings.length === 0 && swaps.length === 0;

/** The bench as the question that the engine takes. */
export function problemOf({ says, instrument, findings, leftOut, swaps }: BenchQuery): ProblemInput {
  return {
    says,
    ...(instrument ? { instrument } : {}),
    evidence: findings.map(({ check, outcome, part }) => ({
      check,
      found: outcome,
      ...(part ? { part } : {}),
    })),
    leaveOut: [...leftOut],
    swaps: swaps.map(swapInput),
  };
}
