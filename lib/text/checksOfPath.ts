import { isBoreStep, isCheckStep, isPlugStep, isSwapStep, type Step } from "../casebook/step";
import type { Check } from "../vocabulary/check";
import type { Vocabulary } from "../vocabulary/vocabulary";

type Reads = NonNullable<Check["reads"]>;

/** Checks by what they read, kept as long as the vocabulary is: most steps are asked about one casebook after another. */
const readers = new WeakMap<Vocabulary["checks"], ReadonlyMap<Reads, readonly string[]>>();

/**
 * Names the checks that were made on a path: by hand, or by what was measured and tried.
 *
 * @returns ids without repetition, in the order in which they were first made
 */
export function checksOfPath(path: readonly Step[], { checks }: Pick<Vocabulary, "checks">): string[] {
  const byReads = readers.get(checks) ?? readersOf(checks);
  readers.set(checks, byReads);
  return [
    ...new Set(
      path.flatMap((step) => [
        ...(isCheckStep(step) ? [step.check] : []),
        ...readsOfStep(step).flatMap((reads) => byReads.get(reads) ?? []),
      ]),
    ),
  ];
}

function readersOf(checks: Vocabulary["checks"]): ReadonlyMap<Reads, readonly string[]> {
  const byReads = new Map<Reads, readonly string[]>();
  for (const { id, reads } of checks.values())
    if (reads) byReads.set(reads, [...(byReads.get(reads) ?? []), id]);
  return byReads;
}

/** Plugs tell of a reduction beside a sound sibling only, of a clearance beside the piston. */
function readsOfStep(step: Step): Reads[] {
  if (isBoreStep(step)) return ["ovality"];
  if (isPlugStep(step))
    return [
      ...(step.reference ? (["reduction"] as const) : []),
      ...(step.piston ? (["clearance"] as const) : []),
    ];
  if (!isCheckStep(step) && !isSwapStep(step)) return [];
  return [
    ...(isSwapStep(step) ? (["swap"] as const) : []),
    ...(step.where === undefined ? [] : (["place"] as const)),
    ...(step.way === undefined ? [] : (["way"] as const)),
  ];
}
