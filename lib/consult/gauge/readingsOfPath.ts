import type { Case } from "../../casebook/caseFile";
import { isBoreStep, isPlugStep, isSwapStep } from "../../casebook/step";
import type { ReadingsInput } from "./readingsInput";

/**
 * The gauge readings that a path tells of, as the gauges take them, in the path's order. Of a pair that was swapped more than
 * once the last counts.
 */
export function readingsOfPath({ path }: Pick<Case, "path">): ReadingsInput {
  const swaps = new Map(
    path.filter(isSwapStep).map(({ swap: [a, b], found, where }) => {
      const said = { a, b, result: found, ...(where === undefined ? {} : { where }) };
      return [`${a} ${b}`, said] as const;
    }),
  );
  return {
    gauges: path.filter(isPlugStep).map(({ plugs, reference, piston }) => ({
      ...plugs,
      ...(reference ? { reference } : {}),
      ...(piston ? { piston } : {}),
    })),
    diameters: path.filter(isBoreStep).map(({ bore }) => bore),
    swaps: [...swaps.values()],
    legs: [],
  };
}
