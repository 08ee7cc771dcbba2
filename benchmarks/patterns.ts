import type { Casebook } from "@/lib/casebook/loadCasebook";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { wordsInQuestion } from "@/lib/consult/record/wordsInQuestion";
import { commonestRoots } from "@/lib/patterns/commonestRoots";
import { harmRates } from "@/lib/patterns/harmRates";
import { loneJobs } from "@/lib/patterns/loneJobs";
import { newSince } from "@/lib/patterns/newSince";
import { quoteRecord } from "@/lib/patterns/quoteRecord";
import { thinPlaces } from "@/lib/patterns/thinPlaces";
import { narrowCases } from "@/lib/text/narrowCases";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { measure } from "./measure";
import { type Result, showTimings } from "./result";

const runs = 10;
/** A month before the corpus ends. */
const since = "2025-05-01";

/** Everything that the page of patterns is counted from, and the handbook's words set beside the cases. */
export function benchPatterns(casebook: Casebook, vocabulary: Vocabulary): Result[] {
  const cases = newestFirst(casebook);
  const time = (run: () => unknown) => showTimings(measure(run, { runs, warmUp: 2 }));
  return [
    {
      work: "count the patterns",
      shown: time(() => {
        narrowCases(cases, {}, { caseOf: (kase) => kase, vocabulary });
        commonestRoots(cases, "maker", { vocabulary, most: 3 });
        quoteRecord(cases);
        harmRates(cases);
        newSince(cases, since);
        thinPlaces(cases, vocabulary, undefined);
        loneJobs(cases, vocabulary);
      }),
    },
    {
      work: "set the handbook's words beside the cases",
      shown: time(() => wordsInQuestion(cases, vocabulary)),
    },
  ];
}
