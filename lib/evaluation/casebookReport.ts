import type { Bench } from "../consult/bench/bench";
import { familyOf } from "../vocabulary/familyOf";
import { type EstimateReport, estimateCoverage } from "./estimateCoverage";
import { type Asked, leaveOneOut } from "./leaveOneOut";
import { rankByHabit } from "./rankByHabit";
import { rankByText } from "./rankByText";
import { type RankSummary, summariseRanks } from "./summariseRanks";

/** How the casebook answers about itself: whole and by family, beside two baselines on the same cases, and what it missed. */
export type CasebookReport = RankSummary &
  Readonly<{
    families: Readonly<Record<string, RankSummary>>;
    baselines: Readonly<{ textSearch: RankSummary; commonestCause: RankSummary }>;
    /** How long jobs were said to take, and how often that held. */
    estimates: EstimateReport;
    missed: readonly (Omit<Asked, "rank"> & Readonly<{ rank: number | null }>)[];
  }>;

/** Asks about every finished case as if it had never happened and sums up at which ranks its root cause came. */
export function casebookReport(bench: Bench): CasebookReport {
  const asked = leaveOneOut(bench);
  const cases = asked.flatMap(({ case: id }) => bench.cases.get(id) ?? []);
  const family = ({ instrument }: Asked) => familyOf(bench.vocabulary, instrument);
  const families = [...new Set(asked.map((one) => family(one)))];
  const ranks = (of: readonly Asked[]) => summariseRanks(of.map(({ rank }) => rank));
  return {
    ...ranks(asked),
    families: Object.fromEntries(
      families.map((name) => [name, ranks(asked.filter((one) => family(one) === name))]),
    ),
    baselines: {
      textSearch: summariseRanks(cases.map((kase) => rankByText(kase, bench))),
      commonestCause: summariseRanks(cases.map((kase) => rankByHabit(kase, bench))),
    },
    estimates: estimateCoverage(bench),
    missed: asked
      .filter(({ rank }) => rank > 1)
      .map((one) => ({ ...one, rank: Number.isFinite(one.rank) ? one.rank : null })),
  };
}
