import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import { rankOutcomes } from "./clauses/rankOutcomes";
import type { ToldOutcome } from "./clauses/tellClauses";
import type { FindingRead, HowRead } from "./findingRead";
import { findMentions, type Mention } from "./parts/mentions";
import { checkBearsOn, partForCheck } from "./parts/partFit";
import { readPart } from "./parts/readPart";
import { matchPhrases } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { findScopes } from "./words/scopes";
import { findSequences, type SequenceKind } from "./words/sequences";
import { splitTokens, type Token } from "./words/token";

/** A check with what was found, both in words or as ids. */
export type EvidenceWords = Readonly<{ check: string; found: string; part?: string }>;

/**
 * What a piece of evidence was taken to be, where one reading is likely enough, and all that it may mean with their shares,
 * the likeliest first; the latter is empty where nothing had to be guessed.
 */
export type EvidenceRead = Readonly<{
  finding: FindingRead | undefined;
  mayMean: readonly ToldOutcome[];
}>;

/** What is left of a meaning's share where it was said with doubt. Chosen. */
const doubtedWorth = 0.5;
/** A meaning less probable than this is left out. */
const leastTold = 0.002;

/** How probable a reading must be, against all others. Chosen: by notes of the handbook left out in turn. */
const leastShare = 0.65;

/**
 * Reads one piece of evidence: ids as they stand; words by the check that was named, the phrases of its outcomes and the
 * words in which they are told. What is read from the words alone is a guess. A bare "none", "fine" or "yes" is answered by the
 * named check itself.
 */
export function readEvidence(
  evidence: EvidenceWords,
  reader: Reader,
  instrument: string | undefined,
): EvidenceRead {
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
      mentionedPart(tokens, foundFrom, check, reader, instrument);
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
  if (named && byId) return { finding: make(named, byId.id, false, false, "outright"), mayMean: [] };

  const serves = (check: Check) =>
    named ? check.id === named.id : appliesTo(vocabulary, check.families, instrument);
  const checkWorth = named ? new Map([[named.id, 10]]) : worthOfChecks(evidence.check, reader);
  const found = tokens.filter(({ start }) => start >= foundFrom);
  const doubted = tokens.some(({ start }, at) => start >= foundFrom && scopes.isDoubted(at));
  const ranked = rankOutcomes(tokens, found, checkWorth, reader, serves);
  const mayMean = ranked
    .map(({ meaning, share }) => ({ meaning, share: doubted ? doubtedWorth * share : share }))
    .filter(({ share }) => share >= leastTold);
  const [best] = ranked;
  const bare = readBareAnswer(found, reader);
  if (best && best.share >= leastShare && (best.phrase || !bare)) {
    const { meaning, phrase, denied, whole } = best;
    const how = whole ? "outright" : phrase ? "phrase" : "words";
    return {
      finding: make(meaning.check, meaning.outcome.id, denied, doubted || !phrase, how),
      mayMean: how === "outright" ? [] : mayMean,
    };
  }
  const spoken = bare && outcomeNamed(tokens, reader, serves);
  const check = spoken?.check ?? mostNamed(checkWorth, reader, serves);
  if (!check || !bare) return { finding: undefined, mayMean };
  const unsound =
    spoken && spoken.outcome.id !== check.normal
      ? spoken.outcome
      : check.outcomes.find(({ id }) => id !== check.normal);
  const outcome = bare === "yes" ? unsound?.id : check.normal;
  return outcome === undefined
    ? { finding: undefined, mayMean }
    : { finding: make(check, outcome, bare === "no", doubted, "outright"), mayMean: [] };
}

/** What a check was called by when it was called by what it may find: "dents: none". */
function outcomeNamed(tokens: readonly Token[], reader: Reader, serves: (check: Check) => boolean) {
  return matchPhrases(tokens, reader.outcomes, ({ check }) => serves(check)).sort(
    (a, b) => b.score - a.score,
  )[0]?.phrase.meaning;
}

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

/** The part that evidence is about: one that is told apart by its number before one that is not, one that was found before one that was looked at. */
function mentionedPart(
  tokens: readonly Token[],
  foundFrom: number,
  check: Check,
  reader: Reader,
  instrument: string | undefined,
) {
  const toldApart = ({ ref }: Mention) => Number(ref.place !== undefined || ref.others);
  const wasFound = ({ first }: Mention) => Number((tokens[first]?.start ?? 0) >= foundFrom);
  return findMentions(tokens, reader, instrument)
    .filter(({ ref }) => checkBearsOn(reader.vocabulary, check, ref.part))
    .sort((a, b) => toldApart(b) - toldApart(a) || wasFound(b) - wasFound(a))[0]?.ref;
}
