import type { Warning } from "../answer";
import type { Bench } from "../bench/bench";
import { countLikeJobs, type JobInView } from "../repairs/countLikeJobs";
import { harmWords } from "../repairs/harmWords";
import { firstHarms, noRecord } from "../repairs/repairRecords";

const mostHarms = 3;

/**
 * What to know before one repair is done: how it went in jobs like this one, how it goes wrong, what to look at first, what
 * can hurt the one who does it.
 *
 * @returns undefined where the handbook knows no such repair
 */
export function warnOfRepair(
  { vocabulary, repairs }: Pick<Bench, "vocabulary" | "repairs">,
  id: string,
  job: JobInView,
): Warning | undefined {
  const repair = vocabulary.repairs.get(id);
  if (!repair) return undefined;
  const record = repairs.get(id) ?? noRecord;
  const harms = firstHarms(record, mostHarms, new Set(job.like.map((kase) => kase.id)));
  const likeJobs = countLikeJobs({ id, record }, vocabulary, job);
  return {
    repair: id,
    label: repair.label,
    riskClass: repair.risk,
    why: harms[0]?.what ?? repair.goesWrong[0] ?? "",
    checkFirst: repair.checkFirst.map(({ check, why }) => ({
      check,
      label: vocabulary.checks.get(check)?.label ?? check,
      why,
    })),
    done: record.done,
    harmed: record.harmed,
    likeJobs,
    odds: harmWords(likeJobs),
    harms: harms.map(({ case: kase, what }) => ({ case: kase, what })),
    goesWrong: repair.goesWrong,
    cautions: repair.cautions.flatMap((caution) => {
      const entry = vocabulary.cautions.get(caution);
      return entry ? [{ id: entry.id, label: entry.label }] : [];
    }),
  };
}
