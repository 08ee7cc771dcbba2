import type { Case } from "../casebook/caseFile";
import { rootCauses } from "../casebook/rootCauses";
import type { Bench } from "../consult/bench/bench";
import { caseFindings } from "../consult/record/caseFindings";
import { wordSimilarities } from "../text/wordSimilarities";

/**
 * Ranks causes for a past case by text search alone, as a baseline: its complaint and its findings in words are looked
 * up among the other cases, and their root causes are taken in the order of the hits.
 *
 * @returns the rank of the case's own root cause from 1, Infinity where no hit has it
 */
export function rankByText(kase: Case, bench: Bench): number {
  const { checks } = bench.vocabulary;
  const findings = caseFindings(kase, bench.vocabulary).map(({ check: id, outcome: found }) => {
    const check = checks.get(id);
    return `${check?.label ?? id} ${check?.outcomes.find((one) => one.id === found)?.label ?? found}`;
  });
  const hits = [...wordSimilarities(bench.text, [kase.complaint, ...findings].join(" "))]
    .filter(([id]) => id !== kase.id)
    .sort(([a, alike], [b, other]) => other - alike || (a < b ? -1 : 1));
  const causes = new Set(
    hits.flatMap(([id]) => {
      const hit = bench.cases.get(id);
      return hit ? rootCauses(hit) : [];
    }),
  );
  const at = [...causes].findIndex((cause) => rootCauses(kase).includes(cause));
  return at < 0 ? Number.POSITIVE_INFINITY : at + 1;
}
