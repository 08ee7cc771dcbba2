import type { Warning } from "../answer";
import type { Bench } from "../bench";
import { latestHarm } from "../repairRecords";

/** What to know before one repair is done: its record, what to look at first, what can hurt the one who does it. */
export function warnOfRepair(
  { vocabulary, repairs }: Pick<Bench, "vocabulary" | "repairs">,
  id: string,
): Warning | undefined {
  const repair = vocabulary.repairs.get(id);
  if (!repair) return undefined;
  const record = repairs.get(id) ?? { done: 0, harmed: 0, harms: [] };
  return {
    repair: id,
    label: repair.label,
    riskClass: repair.risk,
    why: latestHarm(record)?.what ?? repair.goesWrong[0] ?? "",
    checkFirst: repair.checkFirst.map(({ check, why }) => ({
      check,
      label: vocabulary.checks.get(check)?.label ?? check,
      why,
    })),
    done: record.done,
    harmed: record.harmed,
    cautions: repair.cautions.flatMap((caution) => {
      const entry = vocabulary.cautions.get(caution);
      return entry ? [{ id: entry.id, label: entry.label }] : [];
    }),
  };
}
