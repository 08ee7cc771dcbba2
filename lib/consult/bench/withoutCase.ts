import type { Case } from "../../casebook/caseFile";
import type { Bench } from "./bench";
import { teachCase } from "./learned/learned";

/**
 * Asks something of the bench as if one case had never been learned, so that a case is not judged by its own outcome.
 * The lesson is put back before this returns, whatever happens; counts are the same again up to rounding.
 *
 * @param ask must be synchronous: between taking the lesson out and putting it back nothing else may ask
 */
export function withoutCase<T>(bench: Bench, kase: Case, ask: () => T): T {
  if (!bench.cases.has(kase.id)) return ask();
  teachCase(bench, kase, -1);
  try {
    return ask();
  } finally {
    teachCase(bench, kase);
  }
}
