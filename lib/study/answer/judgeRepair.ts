import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import { isRepairStep, type RepairStep } from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** The repair that an apprentice would do, beside what was done and what the handbook says of it. */
export type RepairJudged = Readonly<{
  /** Repairs of the recorded path with how each ended, in its order. */
  recorded: readonly Readonly<{ repair: string; result: RepairStep["result"] }>[];
  /** How the apprentice's own repair ended on that job; null where it was not done there, or none was named. */
  result: RepairStep["result"] | null;
  /** Whether the handbook names it for a root cause. */
  fitsCause: boolean;
  /** What the handbook wants looked at before it. */
  checkFirst: readonly Readonly<{ check: string; why: string }>[];
  /** Whether the check named to come first is one of those. */
  rightFirst: boolean;
  /** What it did on that job that it should not have. */
  harms: readonly string[];
}>;

/**
 * Judges a proposed repair and the check proposed to come before it.
 *
 * @param proposed ids, each undefined where none was named
 */
export function judgeRepair(
  kase: Pick<Case, "path" | "causes" | "harms">,
  proposed: Readonly<{ repair: string | undefined; first: string | undefined }>,
  { causes, repairs }: Pick<Vocabulary, "causes" | "repairs">,
): RepairJudged {
  const { repair, first } = proposed;
  const recorded = kase.path
    .filter(isRepairStep)
    .map((step) => ({ repair: step.repair, result: step.result }));
  const checkFirst = repair === undefined ? [] : (repairs.get(repair)?.checkFirst ?? []);
  return {
    recorded,
    result: recorded.findLast((step) => step.repair === repair)?.result ?? null,
    fitsCause:
      repair !== undefined &&
      rootCauses(kase).some((root) => causes.get(root)?.repairs.includes(repair) === true),
    checkFirst,
    rightFirst: checkFirst.some(({ check }) => check === first),
    harms: kase.harms.filter((harm) => harm.repair === repair).map(({ what }) => what),
  };
}
