import "server-only";
import type { ContentFolders } from "@/lib/casebook/files/contentFolder";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import type { Answer } from "@/lib/consult/answer";
import type { Bench } from "@/lib/consult/bench/bench";
import { type ConsultOptions, consult } from "@/lib/consult/consult";
import { type ProblemInput, problemSchema } from "@/lib/consult/problem";
import type { ContentProblem } from "@/lib/document/contentProblem";
import { type FoundCases, type SearchQuery, searchCases } from "@/lib/text/searchCases";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { keepFresh } from "./keepFresh";
import { type OpenShop, openShop } from "./openShop";

/** The loaded shop as pages, actions and handlers see it. */
export type Shop = Readonly<{
  vocabulary: Vocabulary;
  casebook: Casebook;
  bench: Bench;
  problems: readonly ContentProblem[];
  casesFolder: string;
  folders: ContentFolders;
  consult: (problem: ProblemInput, options?: Pick<ConsultOptions, "plan">) => Answer;
  /** Searches the casebook; the first search after a start may have to wait until the words are indexed. */
  search: (query: SearchQuery) => Promise<FoundCases>;
}>;

declare global {
  /** One shop a process: Next's bundles do not share module scope, and a casebook is loaded once. */
  var benchloreShop: OpenShop | undefined;
}

/** The shop, loaded on first use and kept; changes on disk come in by `keepFresh`. */
export async function getShop(): Promise<Shop> {
  if (globalThis.benchloreShop === undefined) {
    globalThis.benchloreShop = openShop();
    keepFresh(globalThis.benchloreShop.folders);
  }
  const { bench, casebook, problems, folders, searchable } = globalThis.benchloreShop;
  return {
    vocabulary: bench.vocabulary,
    casebook,
    bench,
    problems,
    casesFolder: folders.cases,
    folders,
    consult: (problem, options) => consult(problemSchema.parse(problem), bench, options),
    search: async (query) => {
      if (query.words.trim() !== "") await searchable;
      return searchCases(casebook, bench.text, query);
    },
  };
}
