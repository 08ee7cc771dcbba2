import type { Casebook } from "@/lib/casebook/loadCasebook";
import { type Bench, buildBench } from "@/lib/consult/bench/bench";
import { caseAttributes, caseOutcomes, caseRow } from "@/lib/consult/bench/caseAttributes";
import { causeModelOf } from "@/lib/consult/bench/causeModelOf";
import { teachCase } from "@/lib/consult/bench/learned/learned";
import { wordModelOf } from "@/lib/consult/bench/wordsOfCauses";
import { buildReader } from "@/lib/reading/reader";
import { buildCaseTable } from "@/lib/similarity/caseTable";
import { buildTextIndex } from "@/lib/text/textIndex";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { timeOnce } from "./measure";
import { type Result, showSeconds } from "./result";

/** Builds everything that a consultation needs out of the loaded casebook: as one, then each part by itself. */
export function benchBuildIndexes(
  vocabulary: Vocabulary,
  casebook: Casebook,
): Readonly<{ bench: Bench; results: readonly Result[] }> {
  const cases = [...casebook.cases.values()];
  const model = causeModelOf(vocabulary);
  const reader = buildReader(vocabulary);
  const parts: Readonly<Record<string, () => unknown>> = {
    "reading of shop language": () => buildReader(vocabulary),
    "case table": () => {
      const rows = cases.map((kase) => caseRow(kase, caseOutcomes(kase, vocabulary)));
      buildCaseTable(caseAttributes(vocabulary, model), rows);
    },
    "words of all cases": () => buildTextIndex(cases, vocabulary),
    "cause and word models": () => {
      const spoken = wordModelOf(vocabulary, model, reader);
      for (const kase of cases) teachCase({ vocabulary, model, spoken, reader }, kase);
    },
  };
  const partResults = Object.entries(parts).map(([name, build]) => ({
    work: `of which: ${name}`,
    shown: showSeconds(timeOnce(build)),
  }));
  const whole = timeOnce(() => buildBench(vocabulary, casebook));
  return {
    bench: whole.value,
    results: [{ work: "build all indexes", shown: showSeconds(whole) }, ...partResults],
  };
}
