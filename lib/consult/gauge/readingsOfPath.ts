import type { Case } from "../../casebook/caseFile";
import {
  isBoreStep,
  isLeakStep,
  isPlugStep,
  isSwapStep,
  type Step,
  type SwapStep,
} from "../../casebook/step";
import type { ReadingsInput } from "./readingsInput";

/**
 * The gauge readings that a path tells of, as the gauges take them, in the path's order. Of a pair that was swapped more than
 * once the last counts.
 */
export function readingsOfPath({ path }: Pick<Case, "path">): ReadingsInput {
  return {
    gauges: path.filter(isPlugStep).map(({ plugs, reference, piston }) => ({
      ...plugs,
      ...(reference ? { reference } : {}),
      ...(piston ? { piston } : {}),
    })),
    diameters: path.filter(isBoreStep).map(({ bore }) => bore),
    swaps: lastSwaps(path).map(({ swap: [a, b], found, where, way, turned }) => {
      const how = [where, way, turned].filter((one) => one !== undefined).join(", ");
      return { a, b, result: found, ...(how === "" ? {} : { where: how }) };
    }),
    legs: [],
    leaks: path.filter(isLeakStep).map(({ leak }) => leak),
  };
}

/** The swap tests of a path, of each pair the last. */
export function lastSwaps(path: readonly Step[]): readonly SwapStep[] {
  return [...new Map(path.filter(isSwapStep).map((step) => [step.swap.join(" "), step])).values()];
}
