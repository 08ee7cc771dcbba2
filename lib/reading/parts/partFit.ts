import type { PartRef } from "../../casebook/partRef";
import type { Check } from "../../vocabulary/check";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** Tells whether two parts are one matter: the same, one above the other in the tree, or one the whole that the other belongs to. */
function arePartsAkin({ parts, partTree }: Vocabulary, a: string, b: string): boolean {
  const isWholeOf = (whole: string, part: string) => parts.get(part)?.belongsTo === whole;
  return partTree.isA(a, b) || partTree.isA(b, a) || isWholeOf(a, b) || isWholeOf(b, a);
}

/** Tells whether a check can be about a part. */
export function checkBearsOn(vocabulary: Vocabulary, check: Check, part: string): boolean {
  return check.parts.some((own) => arePartsAkin(vocabulary, own, part));
}

/**
 * Names the part of a finding as its check would: "piston 3 sticks" is about valve 3 when the check is done on valves.
 *
 * @returns the part with the mention's number, or undefined where the check cannot be about it
 */
export function partForCheck(vocabulary: Vocabulary, check: Check, mentioned: PartRef): PartRef | undefined {
  const part =
    check.parts.find((own) => own === mentioned.part) ??
    check.parts.find((own) => arePartsAkin(vocabulary, own, mentioned.part));
  if (part === undefined) return undefined;
  const numbered = vocabulary.parts.get(part)?.numbered === true;
  if (!numbered) return { part, others: false };
  return { ...mentioned, part };
}
