import type { PartRef } from "../casebook/partRef";
import type { OutcomeMeaning } from "./clauses/outcomeMeaning";
import type { Mention } from "./parts/mentions";
import type { PhraseMatch } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { findSwapHow, type SwapHow } from "./readSwapHow";
import type { Scopes } from "./words/scopes";
import { findSequences } from "./words/sequences";
import type { Token } from "./words/token";

/** A swap test read from words: part a tried in part b's place. */
export type SwapRead = Readonly<{
  a: PartRef;
  b: PartRef;
  result: "free" | "drags" | "sticks";
  how: SwapHow;
  from: string;
  span: readonly [number, number];
}>;

const results = ["free", "drags", "sticks"] as const;

/**
 * Reads "piston 3 runs fine in 1", "2nd piston in casing 1 still hangs": a part that can be tried elsewhere, a joining
 * word, the place by name or number, and the result in the same sentence; and what the result depended on, such as "going down
 * only" or "turned half round".
 *
 * @param mentions the parts among which to look, in the order of the text
 * @param matches phrases found in the sentence
 * @returns the first swap test with the tokens it took, or undefined
 */
export function readSwap(
  sentence: readonly Token[],
  mentions: readonly Mention[],
  matches: readonly PhraseMatch<OutcomeMeaning>[],
  scopes: Scopes,
  reader: Reader,
  text: string,
): Readonly<{ read: SwapRead; tokens: readonly number[] }> | undefined {
  const { vocabulary, sequences } = reader;
  const joins = findSequences(sentence, sequences, ["swapJoins"]);
  const said = findSequences(sentence, sequences, results);
  for (const mention of mentions) {
    const host = swapHost(mention.ref, vocabulary.parts);
    if (mention.ref.place === undefined || host === undefined) continue;
    const join = joins.find(({ first }) => first > mention.first && first - mention.last <= 6);
    const place = join && hostPlace(sentence, mentions, join.last, host);
    if (!join || !place || place.place === mention.ref.place) continue;
    const found = said
      .filter(({ first, last }) => !scopes.deniedBy(first, last, new Set()) && first > mention.last)
      .sort((a, b) => a.first - b.first)[0];
    const result = results.find((kind) => kind === found?.kind);
    if (!found || !result) continue;
    const first = Math.min(mention.first, found.first);
    const resultAt = Math.max(place.at, found.last);
    // What comes next is about this swap until another part, or another result, is spoken of.
    const until = Math.min(
      sentence.length,
      ...mentions.filter((next) => next.first > resultAt).map((next) => next.first),
      ...said.filter((next) => next.first > resultAt).map((next) => next.first),
    );
    const depended = findSwapHow(sentence, matches, reader, first, until - 1);
    const { where: _where, way: _way, ...turnedOnly } = depended.how;
    // What is said of a piston that runs free, such as "all the way down", is no place at which it catches.
    const how = result === "free" ? turnedOnly : depended.how;
    const howTokens = result === "free" && !how.turned ? [] : depended.tokens;
    const last = Math.max(resultAt, ...howTokens);
    const span = [sentence[first]?.start ?? 0, sentence[last]?.end ?? 0] as const;
    const guest =
      vocabulary.parts.get(mention.ref.part)?.swapsInto === host
        ? mention.ref.part
        : guestOf(host, vocabulary.parts);
    return {
      read: {
        a: { part: guest ?? mention.ref.part, place: mention.ref.place, others: false },
        b: { part: host, place: place.place, others: false },
        result,
        how,
        from: text.slice(...span),
        span,
      },
      tokens: closeGaps([
        ...Array.from({ length: resultAt - first + 1 }, (_, offset) => first + offset),
        ...howTokens.filter((at) => at > resultAt).sort((a, b) => a - b),
      ]),
    };
  }
  return undefined;
}

/** As many words between two of a swap's words belong to it too: "sticks only when turned". */
const widestGap = 2;

const closeGaps = (ascending: readonly number[]): number[] =>
  ascending.flatMap((at, index) => {
    const gap = at - (ascending[index - 1] ?? at) - 1;
    return gap > 0 && gap <= widestGap
      ? [...Array.from({ length: gap }, (_, back) => at - gap + back), at]
      : [at];
  });

type Parts = Reader["vocabulary"]["parts"];

/** The part that a mentioned one is tried in: a piston's casing; for a valve spoken of as a whole, its piston's. */
function swapHost({ part }: PartRef, parts: Parts): string | undefined {
  const own = parts.get(part)?.swapsInto;
  if (own !== undefined) return own;
  return [...parts.values()].find(({ belongsTo, swapsInto }) => belongsTo === part && swapsInto !== undefined)
    ?.swapsInto;
}

const guestOf = (host: string, parts: Parts) =>
  [...parts.values()].find(({ swapsInto }) => swapsInto === host)?.id;

/** The number after the joining word: of the host by name, or bare. */
function hostPlace(
  sentence: readonly Token[],
  mentions: readonly Mention[],
  joinAt: number,
  host: string,
): Readonly<{ place: number; at: number }> | undefined {
  const named = mentions.find(
    ({ ref, first }) =>
      first > joinAt && first - joinAt <= 3 && ref.place !== undefined && (ref.part === host || !ref.others),
  );
  if (named?.ref.place !== undefined) return { place: named.ref.place, at: named.last };
  for (let at = joinAt + 1; at <= joinAt + 3 && at < sentence.length; at++) {
    const place = sentence[at]?.place;
    if (place !== undefined) return { place, at };
  }
  return undefined;
}
