import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import { rankOutcomes } from "./clauses/rankOutcomes";
import type { FindingRead, HowRead } from "./findingRead";
import { findMentions } from "./parts/mentions";
import { checkBearsOn, partForCheck } from "./parts/partFit";
import { readPart } from "./parts/readPart";
import { matchPhrases, type PhraseMatch } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { findScopes } from "./words/scopes";
import { findSequences, type SequenceKind } from "./words/sequences";
import { splitTokens, type Token } from "./words/token";

/** A check with what was found, both in words or as ids. */
export type EvidenceWords = Readonly<{ check: string; found: string; part?: string }>;

/** How probable a reading must be, against all others. Chosen: by notes of the handbook left out in turn. */
const leastShare = 0.65;

/**
 * Reads one piece of evidence: ids as they stand; words by the check that was named, the phrases of its outcomes and the
 * words in which they are told. What is read from the words alone is a guess. A bare "none", "fine" or "yes" is answered by the
 * named check itself.
 *
 * @returns the finding, or undefined where the words mean nothing known
 */
export function readEvidence(
  evidence: EvidenceWords,
  reader: Reader,
  instrument: string | undefined,
): FindingRead | undefined {
  const { vocabulary } = reader;
  const words = `${evidence.check}: ${evidence.found}`;
  const tokens = splitTokens(`${evidence.check}  ${evidence.found}`, reader.words);
  const scopes = findScopes(tokens, reader.sequences);
  const foundFrom = evidence.check.length + 1;
  const make = (
    check: Check,
    outcome: string,
    absent: boolean,
    doubtful: boolean,
    how: HowRead = "phrase",
  ): FindingRead => {
    const mentioned =
      (evidence.part === undefined ? undefined : readPart(evidence.part, reader, instrument)) ??
      mentionedPart(words, check, reader, instrument);
    return {
      check: check.id,
      outcome,
      part: mentioned && partForCheck(vocabulary, check, mentioned),
      from: words,
      span: [0, words.length],
      absent,
      doubtful,
      how,
    };
  };
  const named = vocabulary.checks.get(evidence.check.trim());
  const byId = named?.outcomes.find(({ id }) => id === evidence.found.trim());
  if (named && byId) return make(named, byId.id, false, false, "outright");

  const serves = (check: Check) =>
    named ? check.id === named.id : appliesTo(vocabulary, check.families, instrument);
  const checkWorth = named ? new Map([[named.id, 10]]) : worthOfChecks(evidence.check, reader);
  const found = tokens.filter(({ start }) => start >= foundFrom);
  const doubted = tokens.some(({ start }, at) => start >= foundFrom && scopes.isDoubted(at));
  const [best] = rankOutcomes(tokens, found, checkWorth, reader, serves);
  const bare = readBareAnswer(found, reader);
  if (best && best.share >= leastShare && (best.phrase || !bare)) {
    const { meaning, phrase, denied } = best;
    return make(
      meaning.check,
      meaning.outcome.id,
      denied,
      doubted || !phrase,
      phrase ? (saysAll(phrase, tokens, foundFrom) ? "outright" : "phrase") : "words",
    );
  }
  const spoken = bare && outcomeNamed(tokens, reader, serves);
  const check = spoken?.check ?? mostNamed(checkWorth, reader, serves);
  if (!check || !bare) return undefined;
  const unsound =
    spoken && spoken.outcome.id !== check.normal
      ? spoken.outcome
      : check.outcomes.find(({ id }) => id !== check.normal);
  const outcome = bare === "yes" ? unsound?.id : check.normal;
  return outcome === undefined ? undefined : make(check, outcome, bare === "no", doubted);
}

/** What a check was called by when it was called by what it may find: "dents: none". */
function outcomeNamed(tokens: readonly Token[], reader: Reader, serves: (check: Check) => boolean) {
  return matchPhrases(tokens, reader.outcomes, ({ check }) => serves(check)).sort(
    (a, b) => b.score - a.score,
  )[0]?.phrase.meaning;
}

/** Whether a phrase takes up every telling word of what was found. */
const saysAll = ({ tokens: taken }: PhraseMatch<unknown>, tokens: readonly Token[], foundFrom: number) =>
  tokens.every(({ filler, start }, at) => filler || start < foundFrom || taken.includes(at));

function worthOfChecks(words: string, reader: Reader): Map<string, number> {
  const worth = new Map<string, number>();
  for (const { phrase, score } of matchPhrases(splitTokens(words, reader.words), reader.checks)) {
    worth.set(phrase.meaning, Math.max(worth.get(phrase.meaning) ?? 0, score));
  }
  return worth;
}

function mostNamed(
  worth: ReadonlyMap<string, number>,
  { vocabulary }: Reader,
  serves: (check: Check) => boolean,
) {
  return [...worth]
    .sort((a, b) => b[1] - a[1])
    .flatMap(([id]) => vocabulary.checks.get(id) ?? [])
    .find(serves);
}

/** "none", "no" deny; "fine", "ok" say it is sound; "yes" says it is so; anything longer is no bare answer. */
function readBareAnswer(answer: readonly Token[], reader: Reader) {
  if (answer.length === 0 || answer.length > 3) return undefined;
  const says = (kind: SequenceKind) => findSequences(answer, reader.sequences, [kind]).length > 0;
  if (says("deniesWhatFollows") || says("deniesWhatPrecedes")) return "no";
  if (says("sound")) return "sound";
  return says("affirms") ? "yes" : undefined;
}

function mentionedPart(words: string, check: Check, reader: Reader, instrument: string | undefined) {
  const tokens = splitTokens(words, reader.words);
  return findMentions(tokens, reader, instrument)
    .filter(({ ref }) => checkBearsOn(reader.vocabulary, check, ref.part))
    .sort(
      (a, b) =>
        Number(b.ref.place !== undefined || b.ref.others) - Number(a.ref.place !== undefined || a.ref.others),
    )[0]?.ref;
}
