import type { Share, SimilarCase } from "@/lib/consult/answer";
import { lowerFirst } from "@/lib/text/lowerFirst";
import type { CaseFact } from "./CaseLine";

/** As many of a kind as one reads at a glance; the rest is counted. */
const mostOfAKind = 4;

const listed = (words: readonly string[]) =>
  words.length <= mostOfAKind
    ? words.join("; ")
    : `${words.slice(0, mostOfAKind).join("; ")}; ${words.length - mostOfAKind} more`;

const agreed = ({ label, there }: Share) =>
  there ? `${lowerFirst(label)}: ${lowerFirst(there)}` : lowerFirst(label);

function apart({ label, here, there }: Share): string {
  if (!here && !there) return lowerFirst(label);
  return `${lowerFirst(label)}: ${there ? lowerFirst(there) : "not said"}, here ${here ? lowerFirst(here) : "not said"}`;
}

/**
 * A like case in four rows at most: what it was, and what agrees, differs and is not known.
 * Within a row the heaviest comes first.
 */
export function factsOf({ shares, causes }: SimilarCase): readonly CaseFact[] {
  const heaviest = [...shares].sort((a, b) => b.share - a.share);
  const of = (...verdicts: Share["verdict"][]) =>
    heaviest.filter(({ verdict }) => verdicts.includes(verdict));
  const roots = causes.filter(({ role }) => role === "root").map(({ label }) => lowerFirst(label));
  const facts: readonly CaseFact[] = [
    { term: "it was", words: listed(roots) },
    { term: "agrees", words: listed(of("agrees").map(agreed)), tone: "good" },
    { term: "near", words: listed(of("near").map(apart)) },
    { term: "differs", words: listed(of("differs").map(apart)), tone: "bad" },
    { term: "unknown", words: listed(of("unknown").map(({ label }) => lowerFirst(label))) },
  ];
  return facts.filter(({ words }) => words !== "");
}
