import type { PartRef } from "../casebook/partRef";
import type { Mention } from "./mentions";
import type { Reader } from "./reader";
import type { Scopes } from "./scopes";
import { findSequences } from "./sequences";
import type { Token } from "./token";

/** A swap test read from words: part a tried in part b's place. */
export type SwapRead = Readonly<{
  a: PartRef;
  b: PartRef;
  result: "free" | "drags" | "sticks";
  from: string;
  span: readonly [number, number];
}>;

const results = ["free", "drags", "sticks"] as const;

/**
 * Reads "piston 3 runs fine in 1", "2nd piston in casing 1 still hangs": a part that can be tried elsewhere, a joining
 * word, the place by name or number, and the result in the same sentence.
 *
 * @param mentions the parts among which to look, in the order of the text
 * @returns the first swap test with the tokens it took, or undefined
 */
export function readSwap(
  sentence: readonly Token[],
  mentions: readonly Mention[],
  scopes: Scopes,
  { vocabulary, sequences }: Reader,
  text: string,
): Readonly<{ read: SwapRead; tokens: readonly number[] }> | undefined {
  const joins = findSequences(sentence, sequences, ["swapJoins"]);
  for (const mention of mentions) {
    const host = swapHost(mention.ref, vocabulary.parts);
    if (mention.ref.place === undefined || host === undefined) continue;
    const join = joins.find(({ first }) => first > mention.first && first - mention.last <= 6);
    const place = join && hostPlace(sentence, mentions, join.last, host);
    if (!join || !place || place.place === mention.ref.place) continue;
    const found = findSequences(sentence, sequences, results)
      .filter(({ first, last }) => !scopes.deniedBy(first, last, new Set()) && first > mention.last)
      .sort((a, b) => a.first - b.first)[0];
    const result = results.find((kind) => kind === found?.kind);
    if (!found || !result) continue;
    const first = Math.min(mention.first, found.first);
    const last = Math.max(place.at, found.last);
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
        from: text.slice(...span),
        span,
      },
      tokens: Array.from({ length: last - first + 1 }, (_, offset) => first + offset),
    };
  }
  return undefined;
}

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
