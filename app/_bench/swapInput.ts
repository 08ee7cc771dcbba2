import type { ProblemInput } from "@/lib/consult/problem";
import type { TappedSwap } from "./benchQuery";

/** A tapped swap as the engine takes it: what it depended on as ids with commas between. */
export function swapInput({ guest, host, result, where, way, turned }: TappedSwap) {
  const how = [where, way, turned].filter((one) => one !== null);
  return {
    a: guest,
    b: host,
    result,
    ...(how.length > 0 ? { where: how.join(", ") } : {}),
  } satisfies NonNullable<ProblemInput["swaps"]>[number];
}
