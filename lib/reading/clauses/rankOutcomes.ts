import type { Check } from "../../vocabulary/check";
import { matchPhrases, type PhraseMatch } from "../phrases/matchPhrases";
import { readDenial } from "../readDenial";
import type { Reader } from "../reader";
import { findScopes } from "../words/scopes";
import type { Token } from "../words/token";
import { type OutcomeMeaning, outcomeName } from "./outcomeMeaning";
import { openOutcomes, tellingTerms, weighTold } from "./spokenOutcomes";

/**
 * An outcome that a piece of evidence may mean: `phrase` where a phrase of the handbook says so and not the words alone,
 * `denied` where it was said of another one that it is not so; `whole` where the phrase says all of what was found; `share` is its
 * probability among all.
 */
export type RankedOutcome = Readonly<{
  meaning: OutcomeMeaning;
  phrase: PhraseMatch<OutcomeMeaning> | undefined;
  denied: boolean;
  whole: boolean;
  share: number;
}>;

/**
 * What speaks for an outcome, each as it counts: a check that was named, the words with which it was called, a phrase of the
 * outcome, the words of what was found and all words together; and what speaks for none of them. Fitted to evidence of the
 * bench (tests/reference/evidence, tuning); that a phrase which says all of what was found counts fully is chosen.
 */
const weights = {
  named: 0.2,
  called: 0.25,
  phrase: 0.28,
  whole: 1,
  found: 0.4,
  words: 0.56,
  none: 3.5,
} as const;

/**
 * Ranks what a piece of evidence may mean, the likeliest first: by the check that was named, by phrases of the outcomes, and
 * by the words in which each outcome is told.
 *
 * @param tokens of the check and of what was found
 * @param found the tokens of what was found alone
 * @param namedWorth how well each check was named, by its id
 * @param serves says which checks make sense here
 */
export function rankOutcomes(
  tokens: readonly Token[],
  found: readonly Token[],
  namedWorth: ReadonlyMap<string, number>,
  reader: Reader,
  serves: (check: Check) => boolean,
): RankedOutcome[] {
  const scopes = findScopes(tokens, reader.sequences);
  const { meanings } = reader.spoken;
  const admits = ({ check }: OutcomeMeaning) => serves(check);
  const open = openOutcomes(reader.spoken, admits);
  const [inFound, inAll] = [found, tokens].map((some) =>
    weighTold(reader.spoken, tellingTerms(some, reader.words), (name) => open.has(name)),
  );
  const best = new Map<string, Omit<RankedOutcome, "share"> & { score: number }>();
  const consider = (
    meaning: OutcomeMeaning,
    score: number,
    phrase?: RankedOutcome["phrase"],
    { denied = false, whole = false } = {},
  ) => {
    const key = outcomeName(meaning);
    if ((best.get(key)?.score ?? Number.NEGATIVE_INFINITY) < score)
      best.set(key, { meaning, phrase, denied, whole, score });
  };
  const called = tokens.length - found.length;
  const worthByWords = new Map(
    meanings.map((meaning, row) => [
      outcomeName(meaning),
      weights.found * (inFound?.[row] ?? 0) + weights.words * (inAll?.[row] ?? 0),
    ]),
  );
  const namedByWords = weighChecks(tokens.slice(0, called), reader, serves);
  const worthOf = ({ check }: OutcomeMeaning) =>
    weights.named * (namedWorth.get(check.id) ?? 0) + weights.called * (namedByWords.get(check.id) ?? 0);
  const toldIn = (meaning: OutcomeMeaning) => worthByWords.get(outcomeName(meaning)) ?? 0;
  for (const meaning of meanings) if (admits(meaning)) consider(meaning, worthOf(meaning) + toldIn(meaning));
  const foundFrom = found[0]?.start ?? 0;
  for (const phrase of matchPhrases(tokens, reader.outcomes, admits)) {
    const { meaning } = phrase.phrase;
    if (!phrase.tokens.some((at) => (tokens[at]?.start ?? 0) >= foundFrom)) continue;
    const [first = 0, last = first] = [phrase.tokens[0], phrase.tokens.at(-1)];
    const whole = found.every(
      ({ filler }, at) => filler || scopes.isSmallWord(called + at) || phrase.tokens.includes(called + at),
    );
    const worth = (whole ? weights.whole : weights.phrase) * phrase.score;
    if (!scopes.deniedBy(first, last, new Set(phrase.tokens))) {
      consider(meaning, worthOf(meaning) + toldIn(meaning) + worth, phrase, { whole });
      continue;
    }
    const id = readDenial(meaning.check, meaning.outcome);
    const outcome = meaning.check.outcomes.find((one) => one.id === id);
    if (outcome)
      consider({ check: meaning.check, outcome }, worthOf(meaning) + worth, phrase, { denied: true, whole });
  }
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  const top = ranked[0]?.score ?? 0;
  const total = ranked.reduce((sum, { score }) => sum + Math.exp(score - top), Math.exp(weights.none - top));
  return ranked.map(({ score, ...one }) => ({ ...one, share: Math.exp(score - top) / total }));
}

/** How likely the words are with which a check was called, against words in general, by its id; natural logarithm. */
function weighChecks(
  called: readonly Token[],
  { spokenChecks, vocabulary, words }: Reader,
  serves: (check: Check) => boolean,
): Map<string, number> {
  const open = new Set([...vocabulary.checks.values()].filter(serves).map(({ id }) => id));
  const { logs } = spokenChecks.weigh(tellingTerms(called, words), (id) => open.has(id));
  return new Map(spokenChecks.topics.map((id, row) => [id, logs[row] ?? 0]));
}
