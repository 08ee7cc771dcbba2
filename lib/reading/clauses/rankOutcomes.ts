import type { Check } from "../../vocabulary/check";
import { matchPhrases, type PhraseMatch } from "../phrases/matchPhrases";
import { readDenial } from "../readDenial";
import type { Reader } from "../reader";
import { findScopes } from "../words/scopes";
import type { Token } from "../words/token";
import { type OutcomeMeaning, outcomeName } from "./outcomeMeaning";
import { openOutcomes, tellingTerms } from "./spokenOutcomes";

/**
 * An outcome that a piece of evidence may mean: `phrase` where a phrase of the handbook says so and not the words alone,
 * `denied` where it was said of another one that it is not so; `share` is its probability among all.
 */
export type RankedOutcome = Readonly<{
  meaning: OutcomeMeaning;
  phrase: PhraseMatch<OutcomeMeaning> | undefined;
  denied: boolean;
  share: number;
}>;

/** What a check that was named and the words alone count beside a phrase of the outcome. Chosen: by notes of the handbook left out in turn. */
const weights = { named: 2, words: 0.35 } as const;

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
  const { model, meanings } = reader.spoken;
  const admits = ({ check }: OutcomeMeaning) => serves(check);
  const open = openOutcomes(reader.spoken, admits);
  const { logs } = model.weigh(tellingTerms(found, reader.words), (name) => open.has(name));
  const best = new Map<string, Omit<RankedOutcome, "share"> & { score: number }>();
  const consider = (
    meaning: OutcomeMeaning,
    score: number,
    phrase?: RankedOutcome["phrase"],
    denied = false,
  ) => {
    const key = outcomeName(meaning);
    if ((best.get(key)?.score ?? Number.NEGATIVE_INFINITY) < score)
      best.set(key, { meaning, phrase, denied, score });
  };
  const worthByWords = new Map(
    meanings.map((meaning, row) => [outcomeName(meaning), weights.words * (logs[row] ?? 0)]),
  );
  const namedByWords = weighChecks(tokens.slice(0, tokens.length - found.length), reader, serves);
  const worthOf = ({ check }: OutcomeMeaning) =>
    weights.named * (namedWorth.get(check.id) ?? 0) + weights.words * (namedByWords.get(check.id) ?? 0);
  for (const meaning of meanings) {
    if (admits(meaning)) consider(meaning, worthOf(meaning) + (worthByWords.get(outcomeName(meaning)) ?? 0));
  }
  const foundFrom = found[0]?.start ?? 0;
  for (const phrase of matchPhrases(tokens, reader.outcomes, admits)) {
    const { meaning } = phrase.phrase;
    if (!phrase.tokens.some((at) => (tokens[at]?.start ?? 0) >= foundFrom)) continue;
    const [first = 0, last = first] = [phrase.tokens[0], phrase.tokens.at(-1)];
    if (!scopes.deniedBy(first, last, new Set(phrase.tokens))) {
      consider(
        meaning,
        worthOf(meaning) + (worthByWords.get(outcomeName(meaning)) ?? 0) + phrase.score,
        phrase,
      );
      continue;
    }
    const id = readDenial(meaning.check, meaning.outcome);
    const outcome = meaning.check.outcomes.find((one) => one.id === id);
    if (outcome) consider({ check: meaning.check, outcome }, worthOf(meaning) + phrase.score, phrase, true);
  }
  const ranked = [...best.values()].sort((a, b) => b.score - a.score);
  const top = ranked[0]?.score ?? 0;
  const total = ranked.reduce((sum, { score }) => sum + Math.exp(score - top), 0);
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
