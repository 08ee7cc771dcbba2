import { parsePartRef } from "@/lib/casebook/partRef";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/**
 * A part as said at the bench.
 *
 * @param written `casing 2`, `other valve`, or null
 * @returns its label in lower case with its number, or undefined where no part is named
 * @example partWords(vocabulary, "other valve") // "other valves"
 */
export function partWords({ parts }: Pick<Vocabulary, "parts">, written: string | null): string | undefined {
  const ref = written === null ? undefined : parsePartRef(written);
  if (!ref) return written ?? undefined;
  const label = (parts.get(ref.part)?.label ?? ref.part).toLowerCase();
  if (ref.others) return `other ${label}s`;
  return ref.place === undefined ? label : `${label}\u00a0${ref.place}`;
}
