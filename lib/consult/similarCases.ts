import type { Case } from "../casebook/caseFile";
import { compileQuery } from "../similarity/compileQuery";
import { explainAsked, type MatchShare } from "../similarity/explainMatch";
import { retrieve } from "../similarity/retrieve";
import type { Query } from "../similarity/row";
import { likenessOf } from "../text/postings/likenessOf";
import type { Share, SimilarCase } from "./answer";
import type { Bench } from "./bench/bench";
import { attributeNames } from "./bench/caseAttributes";
import type { Finding } from "./finding";
import { parseFindingKey } from "./keyFindings";
import type { Problem } from "./problem";
import type { JobInView } from "./repairs/countLikeJobs";
import type { Understanding } from "./understand/understandProblem";

/** How many like cases have a say in what the cause is. Chosen. */
export const voters = 25;
/** A case that is less like the problem than this is not taken as like it. Chosen. */
const leastSimilarity = 0.02;

/** A case found to be like the problem, with what each thing asked gave to its similarity. */
export type RetrievedLike = Readonly<{ case: Case; similarity: number; shares: readonly MatchShare[] }>;

/** Those of the cases found that are like the problem, and not only the least unlike. */
export const reallyLike = (found: readonly RetrievedLike[]) =>
  found.filter(({ similarity }) => similarity >= leastSimilarity);

/** The job that repairs are looked at for, by the cases found for it. */
export const jobInView = (instrument: string | undefined, found: readonly RetrievedLike[]): JobInView => ({
  instrument,
  like: reallyLike(found).map(({ case: kase }) => kase),
});

/** Finds the cases most like the problem, most alike first; none for an instrument outside the handbook. */
export function findSimilarCases(
  bench: Bench,
  problem: Problem,
  { instrument, findings }: Understanding,
  keyed: ReadonlyMap<string, Finding>,
  k: number,
  without: string | undefined,
): RetrievedLike[] {
  if (findings.length === 0 && !problem.says) return [];
  if (instrument !== undefined && bench.vocabulary.instruments.get(instrument)?.outside) return [];
  const query: Query = {
    values: { [attributeNames.instrument]: instrument },
    findings: {
      [attributeNames.findings]: Object.fromEntries([...keyed].map(([key, { outcome }]) => [key, outcome])),
    },
    ...textScores(bench, problem),
  };
  const compiled = compileQuery(bench.table, query);
  const excluded = without === undefined ? undefined : bench.table.rowOfId.get(without);
  return retrieve(bench.table, query, {
    k,
    compiled,
    ...(excluded === undefined ? {} : { exclude: excluded }),
  }).flatMap(({ row, id, similarity }) => {
    const kase = bench.cases.get(id);
    if (!kase) return [];
    return [{ case: kase, similarity, shares: explainAsked(bench.table, row, compiled) }];
  });
}

/** How alike the problem's words and each case's are, until the next question; a case with none of them has 0. */
function textScores(bench: Bench, { says, evidence }: Problem): Pick<Query, "textScores"> {
  const words = [says ?? "", ...evidence.map(({ check, found }) => `${check} ${found}`)].join(" ").trim();
  const { numbers, rowCount } = bench.rowTexts;
  const scores = likenessOf(bench.text.words, words, numbers.subarray(0, rowCount));
  return scores ? { textScores: { [attributeNames.words]: scores } } : {};
}

/** Lays the like cases out for showing: what agrees, what differs, what is unknown, causes and lessons. */
export function showSimilarCases({ vocabulary }: Bench, found: readonly RetrievedLike[]): SimilarCase[] {
  return found.map(({ case: kase, similarity, shares }) => ({
    case: kase.id,
    title: kase.title,
    instrument: vocabulary.instruments.get(kase.instrument)?.label ?? kase.instrument,
    similarity,
    shares: shares.map((share) => showShare(share, vocabulary)).sort((a, b) => b.share - a.share),
    causes: kase.causes.map(({ cause, role }) => ({
      cause,
      role,
      label: vocabulary.causes.get(cause)?.label ?? cause,
    })),
    lessons: kase.lessons,
  }));
}

function showShare(match: MatchShare, vocabulary: Bench["vocabulary"]): Share {
  const verdict =
    match.verdict === "unknown-in-case" || match.verdict === "unknown-in-query" ? "unknown" : match.verdict;
  const common = { verdict, share: match.share } as const;
  const words = (value: unknown) => (typeof value === "string" ? value : "");
  if (match.key !== undefined) {
    const { check: id, others } = parseFindingKey(match.key);
    const check = vocabulary.checks.get(id);
    const outcome = (value: unknown) =>
      check?.outcomes.find((one) => one.id === value)?.label ?? words(value);
    const label = `${check?.label ?? id}${others ? ", the others" : ""}`;
    return {
      ...common,
      attribute: match.key,
      label,
      here: outcome(match.queryValue),
      there: outcome(match.caseValue),
    };
  }
  if (match.attribute === attributeNames.instrument) {
    const name = (value: unknown) => vocabulary.instruments.get(words(value))?.label ?? words(value);
    return {
      ...common,
      attribute: match.attribute,
      label: "Instrument",
      here: name(match.queryValue),
      there: name(match.caseValue),
    };
  }
  return { ...common, attribute: match.attribute, label: "How it was told", here: "", there: "" };
}
