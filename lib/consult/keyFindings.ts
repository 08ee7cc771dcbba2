import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Finding } from "./finding";

/** Mark of a key that is about the siblings of the troubled part. */
const othersMark = "@others";

/** The key under which a finding is compared: its check, apart for the troubled part and for its siblings. */
export const findingKey = (check: string, others: boolean) => (others ? `${check}${othersMark}` : check);

/** Takes a key apart again. */
export function parseFindingKey(key: string): Readonly<{ check: string; others: boolean }> {
  return key.endsWith(othersMark)
    ? { check: key.slice(0, -othersMark.length), others: true }
    : { check: key, others: false };
}

/**
 * Sorts findings by key. A numbered part on which nothing was found amiss, while something was on another, is a sibling:
 * "valve 1 runs free" beside "valve 3 hangs" is about the others. Which number it was does not matter for likeness.
 *
 * @returns key -> finding; of several under one key, on a scale the worst, elsewhere the first that is amiss
 */
export function keyFindings<F extends Finding>(
  findings: readonly F[],
  vocabulary: Vocabulary,
): Map<string, F> {
  const troubled = new Set(
    findings.filter((f) => isAmiss(f, vocabulary)).flatMap(({ part }) => part?.place ?? []),
  );
  const keyed = new Map<string, F>();
  for (const finding of findings) {
    const { part } = finding;
    const others =
      part?.others === true ||
      (part?.place !== undefined &&
        troubled.size > 0 &&
        !troubled.has(part.place) &&
        !isAmiss(finding, vocabulary));
    const key = findingKey(finding.check, others);
    const before = keyed.get(key);
    if (!before || rankOf(finding, vocabulary) > rankOf(before, vocabulary)) keyed.set(key, finding);
  }
  return keyed;
}

function isAmiss({ check: id, outcome, part }: Finding, { checks }: Vocabulary): boolean {
  const normal = checks.get(id)?.normal;
  return normal !== undefined && outcome !== normal && part?.others !== true;
}

/** How much a finding says beside another of its check: on a scale its place there, elsewhere 1 for what is amiss. */
function rankOf({ check: id, outcome }: Finding, { checks }: Vocabulary): number {
  const check = checks.get(id);
  if (check?.normal === undefined || outcome === check.normal) return 0;
  return check.ordered ? check.outcomes.findIndex((one) => one.id === outcome) : 1;
}
