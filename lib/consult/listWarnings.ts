import { appliesTo } from "../vocabulary/appliesTo";
import type { LikelyCause, Warning } from "./answer";
import type { Bench } from "./bench";
import { latestHarm } from "./repairRecords";

/** A cause below this chance puts no repair in view; a repair below this class does no lasting harm by itself. Chosen. */
const inView = 0.08;
const forcefulClass = 3;
const most = 4;

/**
 * Lists the repairs that the likely causes put in view and that can do harm: what went wrong with them in past cases, and
 * what to look at first.
 *
 * @returns the riskiest of the likeliest first, at most four
 */
export function listWarnings(
  { vocabulary, repairs }: Bench,
  causes: readonly LikelyCause[],
  instrument: string | undefined,
): Warning[] {
  const chance = new Map<string, number>();
  for (const { id, probability } of causes) {
    if (probability < inView) continue;
    for (const repair of vocabulary.causes.get(id)?.repairs ?? []) {
      chance.set(repair, (chance.get(repair) ?? 0) + probability);
    }
  }
  return [...chance]
    .flatMap(([id, likely]) => {
      const repair = vocabulary.repairs.get(id);
      if (!repair || !appliesTo(vocabulary, repair.families, instrument)) return [];
      const record = repairs.get(id) ?? { done: 0, harmed: 0, harms: [] };
      if (repair.risk < forcefulClass && record.harmed === 0) return [];
      const why = latestHarm(record)?.what ?? repair.goesWrong[0] ?? "";
      const warning: Warning = {
        repair: id,
        label: repair.label,
        riskClass: repair.risk,
        why,
        checkFirst: repair.checkFirst.map(({ check, why: reason }) => ({
          check,
          label: vocabulary.checks.get(check)?.label ?? check,
          why: reason,
        })),
        done: record.done,
        harmed: record.harmed,
        cautions: repair.cautions.flatMap((caution) => {
          const entry = vocabulary.cautions.get(caution);
          return entry ? [{ id: entry.id, label: entry.label }] : [];
        }),
      };
      return [{ warning, worth: likely * (1 + repair.risk) }];
    })
    .sort((a, b) => b.worth - a.worth || (a.warning.repair < b.warning.repair ? -1 : 1))
    .slice(0, most)
    .map(({ warning }) => warning);
}
