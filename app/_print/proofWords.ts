import { partWords } from "@/app/_components/partWords";
import type { Proof } from "@/lib/consult/sheet/listProofs";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A proof in words: the check, the part, and what it must find. */
export function proofWords(
  { check, part, outcome }: Proof,
  vocabulary: Pick<Vocabulary, "checks" | "parts">,
): string {
  const entry = vocabulary.checks.get(check);
  const label = entry?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome;
  const title = [entry?.label ?? check, partWords(vocabulary, part ?? null)].filter(Boolean).join(", ");
  return `${title}: ${label.toLowerCase()}`;
}
