import { formatPartRef, type PartRef } from "../../casebook/partRef";
import type { ToldClause, ToldOutcome } from "../../reading/clauses/tellClauses";
import type { FindingRead, HowRead } from "../../reading/findingRead";
import { readPart } from "../../reading/parts/readPart";
import { readEvidence } from "../../reading/readEvidence";
import type { Reader } from "../../reading/reader";
import { readFindings } from "../../reading/readFindings";
import { readInstrument } from "../../reading/readInstrument";
import { readSwapHow } from "../../reading/readSwapHow";
import type { GaugingResult, OvalityResult, SwapAnswer, UnderstoodFinding } from "../answer";
import type { Finding } from "../finding";
import type { Problem } from "../problem";
import { blankOut } from "./blankOut";
import { readDiameters, readPlugs } from "./readReadings";
import { readSwapTests, type SwapTest } from "./readSwapTests";
import { swapHowWords } from "./swapHowWords";
import { swapName } from "./swapName";

/** A finding with where it came from, in words to show. */
export type SourcedFinding = Finding &
  Readonly<{
    shown: UnderstoodFinding;
    /** What was tapped or measured was said outright; a guess is shown, but weighs only as its words do. */
    how: HowRead;
  }>;

/** Evidence of which nobody can be sure what it means: all that it may mean, and what it is taken to be, if anything. */
export type GuessedEvidence = Readonly<{
  finding: SourcedFinding | undefined;
  mayMean: readonly ToldOutcome[];
}>;

/** A problem in the vocabulary's terms. */
export type Understanding = Readonly<{
  instrument: string | undefined;
  findings: readonly SourcedFinding[];
  notUnderstood: readonly string[];
  guessed: readonly GuessedEvidence[];
  /** The free text without what somebody only believes. */
  observed: string;
  /** What the clauses of that text may tell of. */
  told: readonly ToldClause[];
  gauging: readonly (GaugingResult | OvalityResult)[];
  swap: SwapAnswer | null;
  remarks: readonly string[];
}>;

/**
 * Reads everything a problem brings: the instrument, the free text, the evidence, the readings and the swap tests.
 * What the technician set down as evidence counts before what was read from the text on the same check and part.
 */
export function understandProblem(problem: Problem, reader: Reader): Understanding {
  const { says = "", evidence, gauges, diameters, swaps, leaveOut } = problem;
  const remarks: string[] = [];
  const beside = [says, ...evidence.map(({ check, found }) => `${check} ${found}`)].join(". ");
  const instrument =
    (problem.instrument ? readInstrument(problem.instrument, reader, beside) : undefined) ??
    readInstrument(says, reader, beside);
  if (problem.instrument && instrument === undefined) {
    remarks.push(`The instrument '${problem.instrument}' is not known here.`);
  }
  const show = showFinding(reader);
  const text = readFindings(says, reader, instrument);
  const onlyBelieved = evidence.length === 0 && text.findings.every(({ how }) => how === "believed");
  const believed = onlyBelieved ? [] : text.believed;
  for (const [from, to] of believed)
    remarks.push(`Taken as an opinion, and not weighed: '${says.slice(from, to)}'.`);
  const left = new Set(leaveOut.map((words) => words.trim()));
  const stays = ({ check, part }: FindingRead) =>
    !left.has(check) && !(part && left.has(`${check} ${formatPartRef(part)}`));

  const fromEvidence: SourcedFinding[] = [];
  const notUnderstood = [...text.notUnderstood];
  const guessed: GuessedEvidence[] = [];
  for (const words of evidence) {
    const { finding: read, mayMean } = readEvidence(words, reader, instrument);
    const finding = read && show(read, "evidence", { how: "outright", ...read });
    if (finding) fromEvidence.push(finding);
    else notUnderstood.push(`${words.check}: ${words.found}`);
    if (mayMean.length > 0) guessed.push({ finding, mayMean });
  }
  const answered = new Set(fromEvidence.map(placeKey));
  const fromText = text.findings
    .filter(({ how }) => onlyBelieved || how !== "believed")
    .filter((read) => stays(read) && !answered.has(placeKey(read)))
    .map(({ how, ...read }) =>
      show(read, "says", how === undefined || how === "believed" ? read : { ...read, how }),
    );

  const gauging: (GaugingResult | OvalityResult)[] = [];
  const measured: SourcedFinding[] = [];
  const partOf = (words: string): PartRef | undefined => {
    const part = readPart(words, reader, instrument);
    if (!part) notUnderstood.push(words);
    return part;
  };
  for (const gauge of gauges) {
    const part = partOf(gauge.part);
    if (!part) continue;
    const { reference, piston, passes, stops } = gauge;
    const { result, findings } = readPlugs(
      { part, passes, stops, ...(reference ? { reference } : {}), ...(piston ? { piston } : {}) },
      reader.vocabulary,
    );
    gauging.push(result);
    measured.push(
      ...findings.map((finding) => show(finding, "gauges", { from: `plugs in ${formatPartRef(part)}` })),
    );
  }
  for (const { part: words, readings } of diameters) {
    const part = partOf(words);
    if (!part) continue;
    const { result, findings } = readDiameters(part, readings, reader.vocabulary);
    gauging.push(result);
    measured.push(
      ...findings.map((finding) => show(finding, "diameters", { from: `bore of ${formatPartRef(part)}` })),
    );
  }
  const given = swaps.flatMap(({ a: guest, b: host, result, where }): SwapTest[] => {
    const [a, b] = [partOf(guest), partOf(host)];
    const how = where === undefined ? {} : readSwapHow(where, reader, instrument);
    return a && b ? [{ a, b, result, how }] : [];
  });
  const answeredPairs = new Set(given.map(swapName));
  const tests: SwapTest[] = [
    ...text.swaps
      .filter((swap) => !left.has(swapName(swap)) && !answeredPairs.has(swapName(swap)))
      .map(({ a, b, result, how, span }) => ({ a, b, result, how, source: "says" as const, span })),
    ...given,
  ];
  const swap = readSwapTests(tests, [...fromEvidence, ...fromText], reader.vocabulary, left);
  const swapWords = tests.map((test) => wordsOfTest(test, reader)).join("; ");
  measured.push(...swap.findings.map((finding) => show(finding, "swaps", { from: swapWords })));
  measured.push(...strokeOfSwaps(tests, reader).map(({ from, ...read }) => show(read, "swaps", { from })));

  const spoken = [...fromEvidence, ...fromText];
  const said = new Set(spoken.map(placeKey));
  return {
    instrument,
    findings: [...spoken, ...measured.filter((finding) => !said.has(placeKey(finding)))],
    notUnderstood,
    guessed,
    observed: blankOut(says, believed),
    told: onlyBelieved ? text.clauses : text.clauses.filter((clause) => !clause.believed),
    gauging,
    swap: swap.result,
    remarks,
  };
}

function wordsOfTest({ a, b, result, how }: SwapTest, { vocabulary }: Reader): string {
  const depended = swapHowWords(how, vocabulary);
  return `${formatPartRef(a)} in ${formatPartRef(b)}: ${[result, depended].filter(Boolean).join(", ")}`;
}

/** Where a swapped pair caught, and which way, are findings about the stroke in that place, as in a case's path; each once. */
function strokeOfSwaps(tests: readonly SwapTest[], reader: Reader): (Finding & { readonly from: string })[] {
  const found = tests.flatMap((test) => {
    const { result, how, b } = test;
    if (result === "free") return [];
    return [...reader.vocabulary.checks.values()].flatMap(({ id: check, reads, outcomes }) => {
      const told = reads === "place" ? how.where : reads === "way" ? how.way : undefined;
      const known = outcomes.find(({ id }) => id === told);
      return known ? [{ check, outcome: known.id, part: b, from: wordsOfTest(test, reader) }] : [];
    });
  });
  const keyOf = ({ check, outcome, part }: Finding) =>
    `${check} ${outcome} ${part ? formatPartRef(part) : ""}`;
  return [...new Map(found.toReversed().map((finding) => [keyOf(finding), finding])).values()].reverse();
}

const placeKey = ({ check, part }: Finding) => `${check} ${part?.others ? "other" : (part?.place ?? "")}`;

function showFinding({ vocabulary }: Reader) {
  return (
    finding: Finding,
    source: UnderstoodFinding["source"],
    words: Readonly<{
      from: string;
      absent?: boolean;
      doubtful?: boolean;
      how?: HowRead;
      span?: readonly [number, number];
    }>,
  ): SourcedFinding => {
    const check = vocabulary.checks.get(finding.check);
    const outcome = check?.outcomes.find(({ id }) => id === finding.outcome);
    return {
      check: finding.check,
      outcome: finding.outcome,
      part: finding.part,
      how: words.how ?? (source === "says" ? "phrase" : "outright"),
      shown: {
        check: finding.check,
        outcome: finding.outcome,
        part: finding.part ? formatPartRef(finding.part) : null,
        from: words.from,
        checkLabel: check?.label ?? finding.check,
        outcomeLabel: outcome?.label ?? finding.outcome,
        absent: words.absent === true,
        doubtful: words.doubtful === true,
        source,
        ...(source === "says" && words.span ? { span: words.span } : {}),
      },
    };
  };
}
