import type { SwapSuspect } from "../../diagnosis/swaps/readSwaps";
import type { SwapAspect } from "../../diagnosis/swaps/swapObservation";
import { upperFirst } from "../../text/upperFirst";

const aspectWords: Readonly<Record<SwapAspect, string>> = {
  where: "at the same place",
  way: "going the same way",
  turned: "turned the same way round",
};

/**
 * Says where a result that depends on place, way or turn speaks for one part: the same whatever it is tried with, it is its own.
 *
 * @returns a sentence each, in the suspects' order
 */
export const swapSplits = (suspects: readonly SwapSuspect[]): readonly string[] =>
  suspects.flatMap(({ part, stuckIn, constant }) =>
    constant.map(
      (aspect) =>
        `${upperFirst(part)} binds ${aspectWords[aspect]} with ${stuckIn.join(" and ")}: that speaks for ${part}.`,
    ),
  );
