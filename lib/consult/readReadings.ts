import { formatPartRef, type PartRef } from "../casebook/partRef";
import { readSwaps, type SwapReading } from "../diagnosis/swaps/readSwaps";
import type { SwapObservation } from "../diagnosis/swaps/swapObservation";
import { ovality } from "../gauging/ovality";
import { plugReport } from "../gauging/plugReport";
import { readSize } from "../gauging/readSize";
import { sizeFlag } from "../gauging/sizeFlag";
import type { Check, Outcome } from "../vocabulary/check";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { GaugingResult, OvalityResult, SwapAnswer } from "./answer";
import type { Finding } from "./finding";

const mmPerThou = 0.0254;
const mmPerInch = 25.4;

/** Plug readings with the part understood; lengths still as written. */
export type PlugReading = Readonly<{
  part: PartRef;
  passes: readonly string[];
  stops: readonly string[];
  reference?: Readonly<{ passes: readonly string[]; stops: readonly string[] }>;
  piston?: Readonly<{ diameter: string; plusMinus?: string | undefined }>;
}>;

/** What readings came to: the numbers, and the findings that they answer by the vocabulary's bounds. */
export type ReadingOf<Result> = Readonly<{ result: Result; findings: readonly Finding[] }>;

/** Brackets a bore by plugs; against a reference and a piston where they were measured. */
export function readPlugs(reading: PlugReading, vocabulary: Vocabulary): ReadingOf<GaugingResult> {
  const { bore, reduction, clearance, flags } = plugReport(reading);
  const { part } = reading;
  const { lowMm, highMm } = bore;
  return {
    findings: [
      ...(reduction
        ? measuredFinding("reduction", reduction.overMm, reduction.underMm, part, vocabulary)
        : []),
      ...(clearance
        ? measuredFinding("clearance", clearance.leastMm, clearance.mostMm, part, vocabulary)
        : []),
    ],
    result: {
      part: formatPartRef(part),
      lowMm,
      highMm,
      lowIn: lowMm === null ? null : round(lowMm / mmPerInch, 5),
      highIn: highMm === null ? null : round(highMm / mmPerInch, 5),
      reductionThou:
        reduction && reduction.overMm !== null
          ? { low: thou(reduction.overMm), high: thouOrNull(reduction.underMm) }
          : null,
      clearanceThou: clearance
        ? {
            low: thouOrNull(clearance.leastMm),
            high: thouOrNull(clearance.mostMm),
            verdict: clearance.standing,
          }
        : null,
      flags,
    },
  };
}

/** Fits an oval to diameters at several angles (degrees). */
export function readDiameters(
  part: PartRef,
  readings: readonly Readonly<{ angle: number; diameter: string }>[],
  vocabulary: Vocabulary,
): ReadingOf<OvalityResult> {
  const flags: string[] = [];
  const known = readings.flatMap(({ angle, diameter }) => {
    const read = readSize(diameter, "diameter");
    if (read.kind === "length") return [{ angleDeg: angle, diameterMm: read.mm }];
    flags.push(sizeFlag(read, `at ${angle} degrees`) ?? "");
    return [];
  });
  const fit = ovality(known);
  if (fit.kind === "too few readings") {
    flags.push(`too few readings: write ${fit.write}`);
    return {
      findings: [],
      result: { part: formatPartRef(part), meanMm: null, ovalityThou: null, directionDeg: null, flags },
    };
  }
  const spreadMm = 4 * fit.amplitudeMm;
  return {
    findings: measuredFinding("ovality", spreadMm, spreadMm, part, vocabulary),
    result: {
      part: formatPartRef(part),
      meanMm: round(fit.meanMm, 5),
      ovalityThou: thou(spreadMm),
      directionDeg: fit.widestDeg === null ? null : round(fit.widestDeg, 1),
      flags: [...flags, ...fit.notes],
    },
  };
}

/** One swap test with its parts understood. */
export type SwapTest = Readonly<{
  a: PartRef;
  b: PartRef;
  result: SwapObservation["result"];
  where?: string | undefined;
}>;

/**
 * Reads swap tests: which part is left in suspicion, and the finding that this answers. How a valve travels is how its
 * own piston runs in its own casing, so findings about it count as tests of the pairs that were swapped.
 */
export function readSwapTests(
  tests: readonly SwapTest[],
  findings: readonly Finding[],
  vocabulary: Vocabulary,
): ReadingOf<SwapAnswer | null> {
  const tried = tests.filter(({ a, b }) => formatPartRef(a) !== formatPartRef(b));
  if (tried.length === 0) return { result: null, findings: [] };
  const pairs = [...tried, ...ownPairs(tried, findings, vocabulary)];
  const reading = readSwaps(
    pairs.map(({ a, b, result, where }) => ({
      a: formatPartRef(a),
      b: formatPartRef(b),
      result,
      ...(where ? { where } : {}),
    })),
  );
  const next = reading.nextSwap;
  return {
    findings: swapFinding(reading, pairs, vocabulary),
    result: {
      suspects: reading.suspects.map(({ part, standing }) => ({ part, standing })),
      nextSwap: next ? [next.a, next.b] : null,
      contradictions: reading.contradictions.map(
        ({ a, b, results }) => `${a} in ${b} was ${results.join(" and ")}: try it again`,
      ),
    },
  };
}

/** How the swapped parts run in their own places, as far as findings tell. */
function ownPairs(
  tests: readonly SwapTest[],
  findings: readonly Finding[],
  { checks }: Vocabulary,
): SwapTest[] {
  const [guest, host] = [tests[0]?.a.part, tests[0]?.b.part];
  if (guest === undefined || host === undefined) return [];
  const travels = findings.flatMap(({ check: id, outcome, part }) => {
    const check = checks.get(id);
    return check?.reads === "travel" && part ? [{ part, free: outcome === check.normal }] : [];
  });
  const named = new Set(travels.flatMap(({ part }) => part.place ?? []));
  const swapped = new Set(tests.flatMap(({ a, b }) => [a.place, b.place]));
  return [...swapped].flatMap((place) => {
    if (place === undefined) return [];
    const travel =
      travels.find(({ part }) => part.place === place) ??
      (named.has(place) ? undefined : travels.find(({ part }) => part.others));
    const own = (part: string): PartRef => ({ part, place, others: false });
    const isTried = tests.some(({ a, b }) => a.place === place && b.place === place);
    return travel && !isTried
      ? [{ a: own(guest), b: own(host), result: travel.free ? "free" : "sticks" }]
      : [];
  });
}

function swapFinding(reading: SwapReading, tests: readonly SwapTest[], vocabulary: Vocabulary): Finding[] {
  const suspects = reading.suspects.filter(({ standing }) => standing === "suspect").map(({ part }) => part);
  const guests = tests.map(({ a }) => a).filter((ref) => suspects.includes(formatPartRef(ref)));
  const hosts = tests.map(({ b }) => b).filter((ref) => suspects.includes(formatPartRef(ref)));
  const tried = new Set(tests.map(({ a, b }) => `${formatPartRef(a)} ${formatPartRef(b)}`)).size;
  if (tried < 2) return [];
  const [guest] = guests;
  const [host] = hosts;
  const suspect =
    reading.unsuited.length > 0 ? "pair" : guest && !host ? "guest" : host && !guest ? "host" : undefined;
  const part = suspect === "guest" ? guest : (host ?? tests[0]?.b);
  if (suspect === undefined || part === undefined) return [];
  return answeringOutcome(vocabulary, "swap", (outcome) => outcome.measured?.suspect === suspect, part);
}

function measuredFinding(
  reads: "reduction" | "clearance" | "ovality",
  lowMm: number | null,
  highMm: number | null,
  part: PartRef,
  vocabulary: Vocabulary,
): Finding[] {
  const within = ({ measured }: Outcome) => {
    if (!measured || (measured.overThou === undefined && measured.underThou === undefined)) return false;
    const over =
      measured.overThou === undefined || (lowMm !== null && lowMm >= measured.overThou * mmPerThou);
    const under =
      measured.underThou === undefined || (highMm !== null && highMm <= measured.underThou * mmPerThou);
    return over && under;
  };
  return answeringOutcome(vocabulary, reads, within, part);
}

function answeringOutcome(
  { checks }: Vocabulary,
  reads: NonNullable<Check["reads"]>,
  holds: (outcome: Outcome) => boolean,
  part: PartRef,
): Finding[] {
  const check = [...checks.values()].find((candidate) => candidate.reads === reads);
  const outcome = check?.outcomes.find(holds);
  return check && outcome ? [{ check: check.id, outcome: outcome.id, part }] : [];
}

const round = (value: number, digits: number) => Number(value.toFixed(digits));
const thou = (mm: number) => round(mm / mmPerThou, 2);
const thouOrNull = (mm: number | null) => (mm === null ? null : thou(mm));
