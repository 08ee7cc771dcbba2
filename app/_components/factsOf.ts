import type { Share, SimilarCase } from "@/lib/consult/answer";
import type { CaseFact } from "./CaseLine";

/** As many of a kind as one reads at a glance; the rest is counted. */
const mostOfAKind = 4;

const listed = (words: readonly string[]) =>
  words.length <= mostOfAKind
    ? words.join("; ")
    : `${words.slice(0, mostOfAKind).join("; ")}; ${words.length - mostOfAKind} more`;

const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
const agreed = ({ label, there }: Share) => (there ? `${lower(label)}: ${lower(there)}` : lower(label));

function apart({ label, here, there }: Share): string {
  if (!here && !there) return lower(label);
  return `${lower(label)}: ${there ? lower(there) : "not said"}, here ${here ? lower(here) : "not said"}`;
}

/**
 * A like case in four rows at most: what it was, and what agrees, differs and is not known.
 * Within a row the heaviest comes first.
 */
export function factsOf({ shares, causes }: SimilarCase): readonly CaseFact[] {
  const heaviest = [...shares].sort((a, b) => b.share - a.share);
  const of = (...verdicts: Share["verdict"][]) =>
    heaviest.filter(({ verdict }) => verdicts.includes(verdict));
  const roots = causes.filter(({ role }) => role === "root").map(({ label }) => lower(label));
  const facts: readonly CaseFact[] = [
    { term: "it was", words: listed(roots) },
    { term: "agrees", words: listed(of("agrees").map(agreed)), tone: "good" },
    { term: "near", words: listed(of("near").map(apart)) },
    { term: "differs", words: listed(of("differs").map(apart)), tone: "bad" },
    { term: "unknown", words: listed(of("unknown").map(({ label }) => lower(label))) },
  ];
  return facts.filter(({ words }) => words !== "");
}
