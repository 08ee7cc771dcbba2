import "server-only";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import type { Answer } from "@/lib/consult/answer";
import type { Bench } from "@/lib/consult/bench";
import { consult } from "@/lib/consult/consult";
import { type OpenBench, openBench } from "@/lib/consult/openBench";
import { type ProblemInput, problemSchema } from "@/lib/consult/problem";
import type { ContentProblem } from "@/lib/document/contentProblem";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { keepFresh } from "./keepFresh";

/** The loaded shop as pages, actions and handlers see it. */
export type Shop = Readonly<{
  vocabulary: Vocabulary;
  casebook: Casebook;
  bench: Bench;
  problems: readonly ContentProblem[];
  casesFolder: string;
  consult: (problem: ProblemInput) => Answer;
}>;

declare global {
  /** One shop a process: Next's bundles do not share module scope, and a casebook is loaded once. */
  var benchloreShop: OpenBench | undefined;
}

/** The shop, loaded on first use and kept; changes on disk come in by `keepFresh`. */
export async function getShop(): Promise<Shop> {
  if (globalThis.benchloreShop === undefined) {
    globalThis.benchloreShop = openBench(process.env);
    keepFresh(globalThis.benchloreShop.folders);
  }
  const { bench, casebook, problems, folders } = globalThis.benchloreShop;
  return {
    vocabulary: bench.vocabulary,
    casebook,
    bench,
    problems,
    casesFolder: folders.cases,
    consult: (problem) => consult(problemSchema.parse(problem), bench),
  };
}
