import { blendRisk } from "../../diagnosis/blendRisk";
import type { PlanRepair, PlanState } from "../../diagnosis/plan/planProblem";
import { riskMinutes } from "../../diagnosis/riskMinutes";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Bench } from "../bench/bench";

/** Stands for going through the instrument until the trouble is found, and mending it; no id looks like it. */
export const lookFurther = "(look further)";

/** How often a repair that the handbook names for a cause cures it. Chosen. */
const mendsUsually = 0.9;
/** Going through the instrument piece by piece until the trouble is found. Chosen; without its repair. */
const lookFurtherMinutes = 120;

/**
 * Lists the repairs that the states' causes name, and looking further, which finds and mends whatever it is.
 *
 *   a repair that does not mend costs, besides itself, 120 minutes of looking further and then the cause's own repair
 *
 * The first repair that a cause names is its own; a state without one is taken to cost the others' average.
 *
 * @param states ids of causes; any other id is a state that no repair mends
 */
export function planRepairsOf(
  { vocabulary, repairs: records }: Pick<Bench, "vocabulary" | "repairs">,
  states: readonly PlanState[],
  instrument: string | undefined,
): PlanRepair[] {
  const named = states.map(({ id }) =>
    (vocabulary.causes.get(id)?.repairs ?? []).filter((repair) =>
      appliesTo(vocabulary, vocabulary.repairs.get(repair)?.families ?? [], instrument),
    ),
  );
  const costs = new Map(
    [...new Set(named.flat())].flatMap((id) => {
      const repair = vocabulary.repairs.get(id);
      if (!repair) return [];
      const record = records.get(id) ?? { done: 0, harmed: 0 };
      return [
        [id, { minutes: repair.minutes.usual, riskMinutes: blendRisk(riskMinutes(repair.risk), record) }],
      ];
    }),
  );
  const own = named.map(([first]) => {
    const cost = first === undefined ? undefined : costs.get(first);
    return cost && cost.minutes + cost.riskMinutes;
  });
  const known = own.flatMap((minutes, at) =>
    minutes === undefined ? [] : [{ minutes, weight: states[at]?.probability ?? 0 }],
  );
  const weight = known.reduce((sum, one) => sum + one.weight, 0);
  // What is not known is taken to cost what the known causes' repairs cost on average.
  const usual = weight > 0 ? known.reduce((sum, one) => sum + one.weight * one.minutes, 0) / weight : 0;
  const afterAll = own.map((minutes) => lookFurtherMinutes + (minutes ?? usual));
  return [
    ...[...costs].map(([id, cost]) => ({
      id,
      ...cost,
      mends: named.map((ids) => (ids.includes(id) ? mendsUsually : 0)),
      failureMinutes: afterAll,
    })),
    { id: lookFurther, minutes: 0, riskMinutes: 0, mends: states.map(() => 0), failureMinutes: afterAll },
  ];
}
