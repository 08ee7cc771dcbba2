import type { PartRef } from "../../casebook/partRef";
import { appliesTo } from "../../vocabulary/appliesTo";
import { depthOfFamily } from "../../vocabulary/depthOfFamily";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { chooseMatches } from "../phrases/chooseMatches";
import { matchPhrases } from "../phrases/matchPhrases";
import type { Reader } from "../reader";
import { isNumberSign } from "../words/scopes";
import { findSequences } from "../words/sequences";
import type { Token } from "../words/token";

/** What each step down the instrument tree adds to a part's name: "inner leg" is the hand slide's on a trombone. Chosen to break ties. */
const ownPartsFirst = 0.01;

/** A part spoken of: which, and the tokens that say so. */
export type Mention = Readonly<{ ref: PartRef; first: number; last: number }>;

/**
 * Finds the parts that a sentence speaks of: by name ("bell stem"), by name and number ("3rd valve", "casing no 2"),
 * by number alone ("the 2nd": the instrument's first numbered part), and their siblings ("the other two").
 *
 * @param instrument bounds which parts make sense, and says what a bare number counts; undefined where it is not known
 * @param notPlaces tokens that count something else ("a third of the way down")
 */
export function findMentions(
  tokens: readonly Token[],
  reader: Reader,
  instrument: string | undefined,
  notPlaces: ReadonlySet<number> = new Set(),
): Mention[] {
  const { vocabulary } = reader;
  const countedPart = findCountedPart(vocabulary, instrument);
  const familiesOf = (part: string) => vocabulary.parts.get(part)?.families ?? [];
  const isPartOfIt = (part: string) => appliesTo(vocabulary, familiesOf(part), instrument);
  const depthOf = (part: string) => depthOfFamily(vocabulary, familiesOf(part), instrument);
  const named = chooseMatches(
    matchPhrases(tokens, reader.parts, isPartOfIt),
    ({ score, tokens: at, phrase }) =>
      isTight(at) ? score * (1 + ownPartsFirst * depthOf(phrase.meaning)) : 0,
  );
  const usedPlaces = new Set<number>();
  const mentions = named.map((match): Mention => {
    const part = match.phrase.meaning;
    const first = match.tokens[0] ?? 0;
    const last = match.tokens.at(-1) ?? first;
    if (!vocabulary.parts.get(part)?.numbered) return { ref: { part, others: false }, first, last };
    const at = placeBeside(tokens, first, last, notPlaces);
    if (at === undefined) return { ref: { part, others: false }, first, last };
    usedPlaces.add(at);
    const place = tokens[at]?.place;
    return {
      ref: { part, others: false, ...(place === undefined ? {} : { place }) },
      first: Math.min(first, at),
      last: Math.max(last, at),
    };
  });
  if (countedPart !== undefined) {
    for (const [at, token] of tokens.entries()) {
      if (token.place === undefined || usedPlaces.has(at) || notPlaces.has(at) || !countsAlone(tokens, at))
        continue;
      mentions.push({ ref: { part: countedPart, place: token.place, others: false }, first: at, last: at });
    }
    for (const { first, last } of findSequences(tokens, reader.sequences, ["others"])) {
      mentions.push({ ref: { part: countedPart, others: true }, first, last });
    }
  }
  return mentions.sort((a, b) => a.first - b.first);
}

/**
 * The numbered part that a bare number means: the first that the instrument or its family counts. Nobody numbers an only
 * valve: on a trombone "past 3rd" is a place on the slide.
 */
function findCountedPart({ instruments }: Vocabulary, instrument: string | undefined): string | undefined {
  let node = instrument === undefined ? undefined : instruments.get(instrument);
  while (node) {
    const [counted] = Object.entries(node.places);
    if (counted !== undefined) return counted[1] > 1 ? counted[0] : undefined;
    node = node.parent === undefined ? undefined : instruments.get(node.parent);
  }
  return undefined;
}

const isTight = (at: readonly number[]) => (at.at(-1) ?? 0) - (at[0] ?? 0) < at.length + 1;
/** A bare number counts a part when it is an ordinal ("2nd"), opens a clause ("2 sticks", "no 2 sticks"), or joins such a one ("1 and 2"). */
function countsAlone(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (!token || !/^\d+$/.test(token.text)) return true;
  if (token.place === undefined || token.place > largestBareNumber) return false;
  const counted = (other: number) => tokens[other]?.place !== undefined;
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  const start = isNumberSign(tokens, at - 1) ? at - 1 : at;
  const opens = start === 0 || tokens[start]?.breakBefore !== "none";
  const joins = before !== undefined && before.text.length <= 3 && !/\d/.test(before.text) && counted(at - 2);
  const isJoined = next !== undefined && next.text.length <= 3 && counted(at + 2);
  return opens || joins || isJoined;
}
/** No instrument has more of a counted part than this; a larger bare number counts something else. */
const largestBareNumber = 6;

/** "3rd valve", "valve 3", "valve no 3", "2nd and 3rd valve": the counting token beside a named part. */
function placeBeside(
  tokens: readonly Token[],
  first: number,
  last: number,
  notPlaces: ReadonlySet<number>,
): number | undefined {
  const near = [first - 1, last + 1, last + 2, first - 2].filter((at) => {
    if (notPlaces.has(at)) return false;
    const from = Math.min(at, first);
    const crossed = tokens
      .slice(from + 1, Math.max(at, last) + 1)
      .some((token) => token.breakBefore !== "none");
    return !crossed && tokens[at]?.place !== undefined;
  });
  const [nearest] = near;
  if (nearest === undefined) return undefined;
  const distance = nearest < first ? first - nearest : nearest - last;
  const between = tokens[nearest < first ? nearest + 1 : last + 1];
  if (distance === 2 && !(between !== undefined && between.text.length <= 6)) return undefined;
  return nearest;
}
