import type { Case } from "@/lib/casebook/caseFile";
import type { Bench } from "@/lib/consult/bench/bench";
import { consult } from "@/lib/consult/consult";
import { keyFindings } from "@/lib/consult/keyFindings";
import { findSimilarCases } from "@/lib/consult/similarCases";
import { understandProblem } from "@/lib/consult/understand/understandProblem";
import { likenessOf } from "@/lib/text/postings/likenessOf";
import { measure } from "./measure";
import { problemsOf } from "./problems";
import { type Result, showTimings } from "./result";

const rounds = 2;
const warmUp = 10;
/** Voters that a consultation asks for. */
const voters = 25;

/** Asks about varied problems, then times the stages by themselves, and the same with a plan. */
export function benchConsult(bench: Bench, strangers: readonly Case[]): Result[] {
  const problems = problemsOf(strangers, bench.vocabulary).map((problem) => {
    const understanding = understandProblem(problem, bench.reader);
    const keyed = keyFindings(understanding.findings, bench.vocabulary);
    const words = [problem.says ?? "", ...problem.evidence.map(({ check, found }) => `${check} ${found}`)];
    return { problem, understanding, keyed, words: words.join(" ") };
  });
  const each = (ask: (one: (typeof problems)[number]) => unknown, times = rounds) => {
    const run = (number: number) => {
      const one = problems[number % problems.length];
      if (one) ask(one);
    };
    return showTimings(measure(run, { runs: times * problems.length, warmUp }));
  };
  return [
    { work: "consult", shown: each(({ problem }) => consult(problem, bench)) },
    {
      work: "of which: read the problem's words",
      shown: each(({ problem }) => understandProblem(problem, bench.reader)),
    },
    {
      work: "of which: find like cases",
      shown: each(({ problem, understanding, keyed }) =>
        findSimilarCases(bench, problem, understanding, keyed, voters, undefined),
      ),
    },
    {
      work: "of which, in that: likeness by words",
      shown: each(({ words }) => likenessOf(bench.text.words, words, bench.rowTexts.numbers)),
    },
    {
      work: "consult with a plan ahead",
      shown: each(({ problem }) => consult(problem, bench, { plan: true }), 1),
    },
  ];
}
