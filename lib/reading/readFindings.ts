import type { PartRef } from "../casebook/partRef";
import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import { depthOfFamily } from "../vocabulary/depthOfFamily";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { isProbable, readsAlone } from "./clauses/isProbable";
import type { OutcomeMeaning } from "./clauses/outcomeMeaning";
import { readByWords } from "./clauses/readByWords";
import { openOutcomes } from "./clauses/spokenOutcomes";
import { type ToldClause, tellClauses } from "./clauses/tellClauses";
import type { FindingRead } from "./findingRead";
import { leftOver } from "./leftOver";
import { joinedMentions } from "./parts/joinedMentions";
import type { Mention } from "./parts/mentions";
import { checkBearsOn, partForCheck } from "./parts/partFit";
import { chooseMatches } from "./phrases/chooseMatches";
import type { PhraseMatch } from "./phrases/matchPhrases";
import { readDenial } from "./readDenial";
import type { Reader } from "./reader";
import { readSound } from "./readSound";
import { readSwap, type SwapRead } from "./readSwap";
import { takeApart } from "./sentence";
import { settleDoubles } from "./settleDoubles";
import type { Scopes } from "./words/scopes";
import { splitTokens, type Token } from "./words/token";

/** A text as understood: findings and swap tests in the order of the text, and the words that nothing took up. */
export type TextRead = Readonly<{
  findings: readonly FindingRead[];
  swaps: readonly SwapRead[];
  notUnderstood: readonly string[];
  /** What each clause may tell of. */
  clauses: readonly ToldClause[];
  /** Where the text tells what somebody believes of the trouble, as places from and to. */
  believed: readonly (readonly [number, number])[];
}>;

/** The least that a reading must be worth, in units of term weight. Chosen: see tests/lib/reading. */
const leastWorth = 1.5;
const fitOfMentioned = 1.15;
const fitOfCarried = 1;
const fitOfNone = 0.9;
const fitOfOther = 0.35;
/** What each step down the tree adds to the worth of a check that is written for it: "slide sticks" is the hand slide on a trombone. Chosen to break ties. */
const ownChecksFirst = 0.01;

/**
 * Reads a technician's text into findings: phrases of the vocabulary, their parts and numbers, what is denied or
 * doubted, and the siblings ("the other two run free").
 *
 * @param instrument instrument id that bounds which checks make sense; undefined where it is not known
 * Source: negation and its scope after Chapman et al. 2001 (NegEx) and Harkema et al. 2009 (ConText).
 */
export function readFindings(text: string, reader: Reader, instrument: string | undefined): TextRead {
  const tokens = splitTokens(text, reader.words);
  const served = checksServing(reader.vocabulary, instrument);
  const nearness = ({ families }: Check) => depthOfFamily(reader.vocabulary, families, instrument);
  const admits = ({ check }: OutcomeMeaning) => served.has(check.id);
  const tellable = openOutcomes(reader.spoken, admits);
  const findings: FindingRead[] = [];
  const swaps: SwapRead[] = [];
  const notUnderstood: string[] = [];
  const believed: (readonly [number, number])[] = [];
  const clauses: ToldClause[] = [];
  let carried: PartRef | undefined;
  let partBefore: string | undefined;
  for (const apart of takeApart(tokens, reader, instrument, admits)) {
    const { tokens: sentence, matches, mentions, scopes } = apart;
    const told = tellClauses(apart, reader, tellable, partBefore);
    clauses.push(...told);
    partBefore = mentions.at(-1)?.ref.part ?? partBefore;
    const used = new Set<number>();
    let swap = readSwap(sentence, mentions, matches, scopes, reader, text);
    while (swap) {
      swaps.push(swap.read);
      for (const token of swap.tokens) used.add(token);
      const end = Math.max(...swap.tokens);
      const after = mentions.filter(({ first }) => first > end);
      swap = readSwap(sentence, after, matches, scopes, reader, text);
    }
    const open = (match: PhraseMatch<OutcomeMeaning>) => match.tokens.every((token) => !used.has(token));
    const chosen = chooseMatches(matches.filter(open), (match) => {
      const worth =
        match.score *
        partFit(match, mentions, scopes, carried, reader) *
        (1 + ownChecksFirst * nearness(match.phrase.meaning.check));
      return worth >= leastWorth ? worth : 0;
    });
    for (const match of chosen) {
      for (const token of match.tokens) used.add(token);
    }
    const read = chosen.map((match) => {
      const mention = nearestMention(match, mentions, scopes, reader);
      if (mention && !mention.ref.others && mention.ref.place !== undefined) carried = mention.ref;
      const meant = [mention, ...joinedMentions(mention, mentions, sentence, reader.words)].flatMap(
        (one) => toFinding(match, one, carried, sentence, scopes, used, reader, text) ?? [],
      );
      return { match, meant };
    });
    const said = read.flatMap(({ meant }) => meant);
    const standing = read.flatMap(({ match, meant }) => {
      const probable = meant.filter((finding) => isProbable(finding, match, said, told));
      if (meant.length === 0 || (probable.length === 0 && readsAlone(match, used, told)))
        for (const token of match.tokens) used.delete(token);
      return probable;
    });
    findings.push(...standing.filter((finding) => !isVoid(finding, standing, reader)));
    for (const sound of readSound(sentence, mentions, scopes, used, reader, instrument, text)) {
      findings.push(...sound.findings);
      for (const token of sound.tokens) used.add(token);
    }
    for (const one of readByWords(apart, told, used, reader, carried, text)) {
      findings.push(one.finding);
      for (const token of one.tokens) used.add(token);
    }
    const lastMain = mentions.findLast(({ ref }) => !ref.others && ref.place !== undefined);
    carried = lastMain?.ref ?? carried;
    notUnderstood.push(...leftOver(sentence, used, mentions, scopes, text, reader));
    believed.push(...runsOf(sentence, (at) => scopes.isBelieved(at)));
  }
  return { findings: settleDoubles(findings, reader.vocabulary), swaps, notUnderstood, clauses, believed };
}

/** Where the text has runs of tokens that a test holds for. */
function runsOf(sentence: readonly Token[], holds: (at: number) => boolean): (readonly [number, number])[] {
  return sentence.flatMap((token, at) => {
    if (!holds(at) || (at > 0 && holds(at - 1))) return [];
    const end = sentence.findIndex((_, other) => other > at && !holds(other));
    return [[token.start, sentence[(end < 0 ? sentence.length : end) - 1]?.end ?? token.end] as const];
  });
}

function checksServing(vocabulary: Vocabulary, instrument: string | undefined): Set<string> {
  const serving = [...vocabulary.checks.values()].filter(({ families }) =>
    appliesTo(vocabulary, families, instrument),
  );
  return new Set(serving.map(({ id }) => id));
}

function clauseMentions(match: PhraseMatch<OutcomeMeaning>, mentions: readonly Mention[], scopes: Scopes) {
  const clause = scopes.clauseOf(match.tokens[0] ?? 0);
  return mentions.filter(({ first }) => scopes.clauseOf(first) === clause);
}

function partFit(
  match: PhraseMatch<OutcomeMeaning>,
  mentions: readonly Mention[],
  scopes: Scopes,
  carried: PartRef | undefined,
  { vocabulary }: Reader,
): number {
  const { check } = match.phrase.meaning;
  const here = clauseMentions(match, mentions, scopes);
  if (here.some(({ ref }) => checkBearsOn(vocabulary, check, ref.part))) return fitOfMentioned;
  if (here.length > 0) return fitOfOther;
  return carried && checkBearsOn(vocabulary, check, carried.part) ? fitOfCarried : fitOfNone;
}

function nearestMention(
  match: PhraseMatch<OutcomeMeaning>,
  mentions: readonly Mention[],
  scopes: Scopes,
  { vocabulary }: Reader,
): Mention | undefined {
  const start = match.tokens[0] ?? 0;
  const distance = ({ first, last }: Mention) => Math.max(0, first - start, start - last);
  return clauseMentions(match, mentions, scopes)
    .filter(({ ref }) => checkBearsOn(vocabulary, match.phrase.meaning.check, ref.part))
    .sort((a, b) => Number(numberless(a)) - Number(numberless(b)) || distance(a) - distance(b))[0];
}

const numberless = ({ ref }: Mention) => ref.place === undefined && !ref.others;

function toFinding(
  match: PhraseMatch<OutcomeMeaning>,
  mention: Mention | undefined,
  carried: PartRef | undefined,
  sentence: readonly Token[],
  scopes: Scopes,
  used: ReadonlySet<number>,
  { vocabulary }: Reader,
  text: string,
): FindingRead | undefined {
  const { check, outcome } = match.phrase.meaning;
  const first = match.tokens[0] ?? 0;
  const last = match.tokens.at(-1) ?? first;
  const denial = scopes.deniedBy(first, last, used);
  const meant = denial ? readDenial(check, outcome) : outcome.id;
  if (meant === undefined) return undefined;
  const spoken =
    mention?.ref ?? (carried && checkBearsOn(vocabulary, check, carried.part) ? carried : undefined);
  const from = sentence[denial ? Math.min(denial.first, first) : first]?.start ?? 0;
  const to = sentence[denial ? Math.max(denial.last, last) : last]?.end ?? 0;
  return {
    check: check.id,
    outcome: meant,
    part: spoken && partForCheck(vocabulary, check, spoken),
    from: text.slice(from, to),
    span: [from, to],
    absent: denial !== undefined,
    doubtful: scopes.isDoubted(first) || scopes.isBelieved(first),
    ...(scopes.isBelieved(first) ? { how: "believed" } : {}),
  };
}

/** Whether another finding of the sentence says that these words do not mean what they would mean alone. */
function isVoid(finding: FindingRead, sentence: readonly FindingRead[], { vocabulary }: Reader): boolean {
  const outcome = vocabulary.checks.get(finding.check)?.outcomes.find(({ id }) => id === finding.outcome);
  return sentence.some((other) =>
    outcome?.unless.some(
      ({ check, outcome: id }) => check === other.check && id === other.outcome && !other.part?.others,
    ),
  );
}
