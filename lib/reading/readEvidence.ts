import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import type { FindingRead } from "./findingRead";
import { matchPhrases } from "./matchPhrases";
import { findMentions } from "./mentions";
import { checkBearsOn, partForCheck } from "./partFit";
import { readDenial } from "./readDenial";
import type { Reader } from "./reader";
import { readPart } from "./readPart";
import { findScopes } from "./scopes";
import { findSequences, type SequenceKind } from "./sequences";
import { splitTokens, type Token } from "./token";

/** A check with what was found, both in words or as ids. */
export type EvidenceWords = Readonly<{ check: string; found: string; part?: string }>;

/** What naming the right check adds to an outcome's worth: the check's words bound what the finding can mean. */
const checkNamed = 1.5;
const leastWorth = 1.2;

/**
 * Reads one piece of evidence: ids as they stand; words by the phrases of all outcomes, those of the check that was named
 * first. A bare "none", "fine" or "yes" is answered by the named check itself.
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
  const make = (check: Check, outcome: string, absent: boolean, doubtful: boolean): FindingRead => {
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
    };
  };
  const named = vocabulary.checks.get(evidence.check.trim());
  const byId = named?.outcomes.find(({ id }) => id === evidence.found.trim());
  if (named && byId) return make(named, byId.id, false, false);

  const serves = (check: Check) =>
    named ? check.id === named.id : appliesTo(vocabulary, check.families, instrument);
  const checkWorth = named ? new Map([[named.id, 10]]) : worthOfChecks(evidence.check, reader);
  const doubted = tokens.some(({ start }, at) => start >= foundFrom && scopes.isDoubted(at));
  const [best] = matchPhrases(tokens, reader.outcomes)
    .filter(({ phrase }) => serves(phrase.meaning.check))
    .map((match) => ({
      match,
      worth:
        match.score * (touches(match.tokens, tokens, foundFrom) ? 1 : 0.6) +
        (checkWorth.get(match.phrase.meaning.check.id) ?? 0) * checkNamed,
    }))
    .sort((a, b) => b.worth - a.worth);
  const bare = readBareAnswer(tokens, foundFrom, reader);
  if (best && best.worth >= leastWorth && touches(best.match.tokens, tokens, foundFrom)) {
    const { check, outcome } = best.match.phrase.meaning;
    const first = best.match.tokens[0] ?? 0;
    const last = best.match.tokens.at(-1) ?? first;
    const denied = scopes.deniedBy(first, last, new Set(best.match.tokens)) !== undefined;
    const meant = denied ? readDenial(check, outcome) : outcome.id;
    return meant === undefined ? undefined : make(check, meant, denied, doubted);
  }
  const spoken = best?.match.phrase.meaning;
  const check = spoken?.check ?? mostNamed(checkWorth, reader, serves);
  if (!check || !bare) return undefined;
  const unsound =
    spoken && spoken.outcome.id !== check.normal
      ? spoken.outcome
      : check.outcomes.find(({ id }) => id !== check.normal);
  const outcome = bare === "yes" ? unsound?.id : check.normal;
  return outcome === undefined ? undefined : make(check, outcome, bare === "no", doubted);
}

const touches = (at: readonly number[], tokens: readonly Token[], from: number) =>
  at.some((index) => (tokens[index]?.start ?? 0) >= from);

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
function readBareAnswer(tokens: readonly Token[], from: number, reader: Reader) {
  const answer = tokens.filter(({ start }) => start >= from);
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
