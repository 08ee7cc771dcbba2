import type { PhraseMatch } from "./matchPhrases";

/**
 * Chooses the matches that together read the sentence best while no token is read twice: the best first, then the best of
 * what is left.
 *
 * @param rank what a match is worth, higher is better; a match worth 0 or less is never chosen
 * @returns the chosen matches in the order of the text; ties go to the match that begins first, then to the longer
 */
export function chooseMatches<Meaning>(
  matches: readonly PhraseMatch<Meaning>[],
  rank: (match: PhraseMatch<Meaning>) => number,
): PhraseMatch<Meaning>[] {
  const ranked = matches
    .map((match) => ({ match, worth: rank(match) }))
    .filter(({ worth }) => worth > 0)
    .sort(
      (a, b) =>
        b.worth - a.worth || first(a.match) - first(b.match) || b.match.tokens.length - a.match.tokens.length,
    );
  const taken = new Set<number>();
  const chosen: PhraseMatch<Meaning>[] = [];
  for (const { match } of ranked) {
    if (match.tokens.some((token) => taken.has(token))) continue;
    if (match.tokens.length === 1 && chosen.some((other) => encloses(other, first(match)))) continue;
    if (chosen.some((other) => other.tokens.some((at) => encloses(match, at)))) continue;
    for (const token of match.tokens) taken.add(token);
    chosen.push(match);
  }
  return chosen.sort((a, b) => first(a) - first(b));
}

/** A lone word in the midst of a longer phrase belongs to what that phrase says, and no phrase reaches over a better one. */
const encloses = ({ tokens }: PhraseMatch<unknown>, at: number) =>
  at > (tokens[0] ?? 0) && at < (tokens.at(-1) ?? 0);

const first = (match: PhraseMatch<unknown>) => match.tokens[0] ?? 0;
