import { findSequences, type SequenceFound, type Sequences } from "./sequences";
import type { Token } from "./token";

/** How the small words of a sentence bear on what stands around them. */
export type Scopes = Readonly<{
  /** Number of the clause that a token stands in, from 0. */
  clauseOf: (at: number) => number;
  /** The words that deny the tokens from first to last, or undefined; words in `used` already belong to a finding. */
  deniedBy: (first: number, last: number, used: ReadonlySet<number>) => SequenceFound | undefined;
  isDoubted: (at: number) => boolean;
  /** Whether a token tells what somebody believes, not what was seen. */
  isBelieved: (at: number) => boolean;
  /** Words that say the thing is as it should be. */
  sound: readonly SequenceFound[];
  others: readonly SequenceFound[];
  isSmallWord: (at: number) => boolean;
}>;

/** Telling words that one thing of a list has at most; what is longer is told for itself. Chosen. */
const longestItem = 3;
/** How far a denial reaches, in words. Source: NegEx, Chapman et al. 2001, section 2 (five words and the term itself). */
const denialReach = 6;

/** Finds the small words of a sentence and lays out their scopes. */
export function findScopes(tokens: readonly Token[], sequences: Sequences): Scopes {
  const find = (...kinds: Parameters<typeof findSequences>[2]) => findSequences(tokens, sequences, kinds);
  const ends = find("endsScope");
  const clauses = numberClauses(tokens, ends);
  const clauseOf = (at: number) => clauses[at] ?? 0;
  const negations = find("deniesWhatFollows");
  const before = negations.filter(({ first }) => !isNumberSign(tokens, first));
  const after = find("deniesWhatPrecedes");
  const doubts = find("doubts", "longAgo");
  const believed = believedIn(tokens, find("beliefs"), clauseOf);
  const joins = find("joinsDenied");
  const sound = find("sound");
  const others = find("others");
  const small = new Set<number>();
  for (const { first, last } of [
    ...ends,
    ...negations,
    ...after,
    ...doubts,
    ...joins,
    ...others,
    ...find("all", "swapJoins"),
  ]) {
    for (let at = first; at <= last; at++) small.add(at);
  }
  const free = (found: SequenceFound, used: ReadonlySet<number>) => {
    for (let at = found.first; at <= found.last; at++) if (used.has(at)) return false;
    return true;
  };
  const isItem = (clause: number) =>
    tokens.filter((token, at) => clauseOf(at) === clause && !token.filler).length <= longestItem;
  /** "no dents, bends or lime": the denial runs on through a list that an "or" closes. */
  const listed = (trigger: SequenceFound, at: number) =>
    joins.some((join) => {
      const last = clauseOf(join.first);
      if (join.first <= trigger.last || last < clauseOf(at)) return false;
      for (let clause = clauseOf(trigger.first) + 1; clause < last; clause++)
        if (!isItem(clause)) return false;
      return true;
    }) && !ends.some((end) => end.first > trigger.last && end.first < at);
  return {
    clauseOf,
    sound,
    others,
    deniedBy: (first, last, used) =>
      before.findLast(
        (trigger) =>
          (trigger.last < first || (trigger.first > first && trigger.last < last)) &&
          free(trigger, used) &&
          ((clauseOf(trigger.first) === clauseOf(first) && first - trigger.last <= denialReach) ||
            listed(trigger, first)),
      ) ??
      after.find(
        (trigger) =>
          trigger.first > last &&
          free(trigger, used) &&
          trigger.first - last <= denialReach &&
          clauseOf(trigger.first) - clauseOf(last) <=
            (tokens[trigger.first]?.breakBefore === "clause" ? 1 : 0),
      ),
    isDoubted: (at) => doubts.some(({ first }) => clauseOf(first) === clauseOf(at)),
    isBelieved: (at) => believed.has(at),
    isSmallWord: (at) => small.has(at),
  };
}

/** A belief runs on to the end of its clause; one that ends a clause is about what the clause said before ("bad pads he reckons"). */
function believedIn(
  tokens: readonly Token[],
  beliefs: readonly SequenceFound[],
  clauseOf: (at: number) => number,
): ReadonlySet<number> {
  const believed = new Set<number>();
  for (const { first, last } of beliefs) {
    const clause = [...tokens.keys()].filter((at) => clauseOf(at) === clauseOf(first));
    const after = clause.filter((at) => at > last);
    const says = after.some((at) => !tokens[at]?.filler) ? clause.filter((at) => at >= first) : clause;
    for (const at of says) believed.add(at);
  }
  return believed;
}

/** "valve no 2": before a bare whole number that counts a place, "no" is short for number and denies nothing. */
export function isNumberSign(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  return (
    /^no$/i.test(tokens[at]?.text ?? "") &&
    next?.place !== undefined &&
    next.breakBefore === "none" &&
    /^\d+$/.test(next.text)
  );
}

/** A clause ends at a comma, colon, bracket or dash, and before a word such as "but". */
function numberClauses(tokens: readonly Token[], ends: readonly SequenceFound[]): number[] {
  let clause = 0;
  return tokens.map((token, at) => {
    if (at > 0 && (token.breakBefore === "clause" || ends.some(({ first }) => first === at))) clause++;
    return clause;
  });
}
