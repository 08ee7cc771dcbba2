import type { SwapTried } from "@/lib/consult/answer";
import { idSchema } from "@/lib/vocabulary/words";
import type { TappedSwap } from "./benchQuery";

/** Words that are no id do not go into the address: they are said again in the sentence, or tapped. */
const idOrNull = (text: string | null) => idSchema.safeParse(text).data ?? null;

/** A swap test of the answer as it would stand if it had been tapped, so that a tap corrects it without losing the rest. */
export const tappedSwap = ({ a, b, result, where, way, turned }: SwapTried): TappedSwap => ({
  guest: a,
  host: b,
  result,
  where: idOrNull(where),
  way: idOrNull(way),
  turned: idOrNull(turned),
});
