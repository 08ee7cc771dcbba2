import { formatPartRef, type PartRef } from "../../casebook/partRef";
import { ovality } from "../../gauging/bores/ovality";
import { readSize, type SizeKind } from "../../gauging/lengths/readSize";
import { sizeFlag } from "../../gauging/lengths/sizeFlag";
import { plugReport } from "../../gauging/plugs/plugReport";
import { type Splay, splay } from "../../gauging/slides/splay";
import type { Outcome } from "../../vocabulary/check";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { GaugingResult, OvalityResult } from "../answer";
import type { Finding } from "../finding";
import { answeringOutcome } from "./answeringOutcome";

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

/** The distance across two legs at several places, lengths as written. */
export type LegsReading = Readonly<{
  plusMinus?: string | undefined;
  readings: readonly Readonly<{ at: string; across: string }>[];
}>;

/** Reads how two legs stand to one another; what cannot be read is flagged and left out. */
export function readLegs(
  part: PartRef | undefined,
  { plusMinus, readings }: LegsReading,
  vocabulary: Vocabulary,
): ReadingOf<Readonly<{ splay: Splay; flags: readonly string[] }>> {
  const flags: string[] = [];
  const mmOf = (text: string, kind: SizeKind) => {
    const read = readSize(text, kind);
    if (read.kind === "length") return [read.mm];
    flags.push(sizeFlag(read, "") ?? "");
    return [];
  };
  const known = readings.flatMap(({ at, across }) => {
    const [[placeMm], [acrossMm]] = [mmOf(at, "depth"), mmOf(across, "across")];
    return placeMm === undefined || acrossMm === undefined ? [] : [{ placeMm, acrossMm }];
  });
  const [doubtMm] = plusMinus === undefined ? [0] : mmOf(plusMinus, "uncertainty");
  // A doubt that cannot be read is not none: nothing is said then.
  const found = splay(doubtMm === undefined ? [] : known, doubtMm);
  return {
    findings:
      found.kind === "measured" && part
        ? measuredFinding("splay", found.leastMm, found.mostMm, part, vocabulary)
        : [],
    result: { splay: found, flags },
  };
}

function measuredFinding(
  reads: "reduction" | "clearance" | "ovality" | "splay",
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

const round = (value: number, digits: number) => Number(value.toFixed(digits));
const thou = (mm: number) => round(mm / mmPerThou, 2);
const thouOrNull = (mm: number | null) => (mm === null ? null : thou(mm));
