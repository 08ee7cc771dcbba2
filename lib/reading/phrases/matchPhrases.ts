import type { Token } from "../words/token";
import { longPhrase, type Phrase, type PhraseIndex } from "./phraseIndex";

/** A phrase found among tokens: which of them it took (ascending) and how well, in units of term weight. */
export type PhraseMatch<Meaning> = Readonly<{
  phrase: Phrase<Meaning>;
  tokens: readonly number[];
  score: number;
}>;

/** Words that may stand between those of a phrase before they count as another matter. */
const widestGap = 3;
/** A long phrase may lack weak terms, together up to this share of its weight. */
const mayMiss = 0.25;
/** What each word in between, a comma in between, and a wrong order take off. Chosen: see tests/lib/reading. */
const gapCost = 0.08;
const commaCost = 0.2;
const orderCost = 0.2;

/**
 * Finds every phrase of the index in one sentence. A phrase matches when its words stand close together; typing slips
 * are forgiven at a price, and one weak word of four or more may be missing.
 *
 * @param tokens one sentence
 * @param admits says which meanings make sense here; the others are not looked for
 * @returns matches in no particular order; several may take the same tokens
 */
export function matchPhrases<Meaning>(
  tokens: readonly Token[],
  index: PhraseIndex<Meaning>,
  admits: (meaning: Meaning) => boolean = () => true,
): PhraseMatch<Meaning>[] {
  const places = new Map<string, Readonly<{ at: number; quality: number }>[]>();
  for (const [at, token] of tokens.entries()) {
    for (const { term, quality } of index.nearest(token.term)) {
      places.set(term, [...(places.get(term) ?? []), { at, quality }]);
    }
  }
  const matches: PhraseMatch<Meaning>[] = [];
  for (const number of likelyPhrases(places.keys(), index)) {
    const phrase = index.phrases[number];
    if (!phrase || !admits(phrase.meaning)) continue;
    const anchors = phrase.terms.flatMap((term) => places.get(term) ?? []).map(({ at }) => at);
    for (const anchor of new Set(anchors)) {
      const match = matchAt(phrase, anchor, tokens, places, index);
      if (match) matches.push(match);
    }
  }
  return matches;
}

/**
 * The phrases of which the sentence has terms enough, in the order in which their first one comes: nearly all others fall out
 * by this alone. A common word stands in thousands, so they are counted in a typed array.
 */
function likelyPhrases(terms: Iterable<string>, { byTerm, phrases, leastTerms }: PhraseIndex<unknown>) {
  const present = new Uint8Array(phrases.length);
  const met: number[] = [];
  for (const term of terms) {
    for (const phrase of byTerm.get(term) ?? []) {
      const before = present[phrase] ?? 0;
      present[phrase] = before + 1;
      if (before === 0) met.push(phrase);
    }
  }
  return met.filter((phrase) => (present[phrase] ?? 0) >= (leastTerms[phrase] ?? 0));
}

/** The best reading of a phrase whose first token is `anchor`. */
function matchAt<Meaning>(
  phrase: Phrase<Meaning>,
  anchor: number,
  tokens: readonly Token[],
  places: ReadonlyMap<string, readonly Readonly<{ at: number; quality: number }>[]>,
  index: PhraseIndex<Meaning>,
): PhraseMatch<Meaning> | undefined {
  const last = reach(tokens, anchor, phrase.terms.length);
  const taken: number[] = [];
  /** Where each term of the phrase was found, by the term's place in the phrase. */
  const takenBy: (number | undefined)[] = [];
  let found = 0;
  for (const term of phrase.terms) {
    const free = (places.get(term) ?? []).filter(
      ({ at }) => at >= anchor && at <= last && !taken.includes(at),
    );
    const best = free.reduce<(typeof free)[number] | undefined>(
      (kept, place) => (kept === undefined || place.quality > kept.quality ? place : kept),
      undefined,
    );
    takenBy.push(best?.at);
    if (!best) continue;
    taken.push(best.at);
    found += index.weightOf(term) * best.quality;
  }
  const ordered = [...taken].sort((a, b) => a - b);
  if (ordered[0] !== anchor) return undefined;
  const missing = 1 - taken.length / phrase.terms.length;
  const missingWeight = 1 - found / phrase.weight;
  if (missing > 0 && (phrase.terms.length < longPhrase || missingWeight > mayMiss)) return undefined;
  if (phrase.denials.some((at) => !isBound(takenBy[at], takenBy[at + 1], tokens))) return undefined;
  const end = ordered.at(-1) ?? anchor;
  const between = tokens
    .slice(anchor + 1, end + 1)
    .filter((token, offset) => !taken.includes(anchor + 1 + offset) && !token.filler);
  const breaks = tokens.slice(anchor + 1, end + 1).filter((token) => token.breakBefore === "clause").length;
  if (!isOneMatter(taken.length, between.length, breaks)) return undefined;
  const wrongOrder = taken.some((at, position) => position > 0 && at < (taken[position - 1] ?? at));
  const cost =
    between.length * gapCost + breaks * (taken.length < 3 ? 2 : 1) * commaCost + (wrongOrder ? orderCost : 0);
  return { phrase, tokens: ordered, score: found * Math.max(0.3, 1 - cost) };
}

/** Two words with a comma between belong to two matters; three may be a treatment and its result ("cleaned it, no change"). */
function isOneMatter(words: number, between: number, breaks: number): boolean {
  if (words < 3) return breaks === 0 && between <= 1;
  if (words < longPhrase) return breaks === 0 ? between <= 1 : between === 0;
  return true;
}

/** A word that denies is there, for without it the phrase means the contrary, and stands before the word it denies, in the same clause, with fillers at most between them. */
function isBound(denial: number | undefined, denied: number | undefined, tokens: readonly Token[]): boolean {
  if (denial === undefined) return false;
  if (denied === undefined) return true;
  const between = tokens.slice(denial + 1, denied + 1);
  return (
    denied > denial &&
    between.every((token, at) => token.breakBefore === "none" && (token.filler || at === between.length - 1))
  );
}

/** The last token that a phrase beginning at `anchor` may still take. */
function reach(tokens: readonly Token[], anchor: number, length: number): number {
  let allowed = length + widestGap;
  let at = anchor;
  while (at + 1 < tokens.length && allowed > 0) {
    at++;
    if (!tokens[at]?.filler) allowed--;
  }
  return at;
}
