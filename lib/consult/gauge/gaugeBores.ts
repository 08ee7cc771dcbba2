import { boreMap } from "../../gauging/bores/boreMap";
import type { BoreSection } from "../../gauging/bores/boreSection";
import { boreWords } from "../../gauging/bores/boreWords";
import { taperWords } from "../../gauging/bores/taperWords";
import { lengthWords } from "../../gauging/lengths/lengthWords";
import { readSize } from "../../gauging/lengths/readSize";
import { sizeFlag } from "../../gauging/lengths/sizeFlag";
import type { GaugedSection, GaugedTaper } from "./gaugeAnswer";
import type { ReadingsInput } from "./readingsInput";
import { roundTo } from "./roundTo";

type Diameters = ReadingsInput["diameters"][number];

const mmPerThou = 0.0254;
const words = lengthWords("both");

/**
 * Turns the diameters of one bore, all of its depths, into numbers, words and flags.
 *
 * @param depths all of one part
 */
export function gaugeBores(
  part: string,
  depths: readonly Diameters[],
): Readonly<{ sections: readonly GaugedSection[]; taper: GaugedTaper }> {
  const read = depths.map((section) => readSection(section));
  const { sections, taper } = boreMap(read);
  const fitted = taper.kind === "fitted" ? taper : undefined;
  return {
    sections: sections.map((section, index) =>
      showSection(part, section, read[index]?.flags ?? [], read[index]?.readings.length ?? 0),
    ),
    taper: {
      part,
      depths: depths.length,
      changeThou: fitted ? roundTo(fitted.changeMm / mmPerThou, 3) : null,
      standardErrorThou:
        fitted && fitted.standardErrorMm !== null ? roundTo(fitted.standardErrorMm / mmPerThou, 3) : null,
      thouPerInch: fitted ? roundTo(fitted.slope * 1000, 3) : null,
      means: [taperWords(taper, words)],
    },
  };
}

function readSection({ depth, readings }: Diameters) {
  const flags: string[] = [];
  const mmOf = (text: string, kind: "diameter" | "depth", place: string) => {
    const size = readSize(text, kind);
    if (size.kind === "length") return size.mm;
    flags.push(sizeFlag(size, place) ?? "");
    return undefined;
  };
  return {
    depthMm: depth === undefined ? null : (mmOf(depth, "depth", "at depth") ?? null),
    readings: readings.flatMap(({ angle, diameter }) => {
      const diameterMm = mmOf(diameter, "diameter", `at ${angle} degrees`);
      return diameterMm === undefined ? [] : [{ angleDeg: angle, diameterMm }];
    }),
    flags,
  };
}

function showSection(
  part: string,
  section: BoreSection & Readonly<{ depthMm: number | null }>,
  flags: readonly string[],
  readings: number,
): GaugedSection {
  const { oval, depthMm } = section;
  const said = boreWords(section, words);
  const place = {
    part,
    depthIn: roundTo(depthMm === null ? null : depthMm / 25.4, 5),
    depthMm: roundTo(depthMm, 5),
    readings,
  };
  const means = [said.oval, said.press, said.dent].filter((sentence) => sentence !== undefined);
  if (oval.kind === "too few readings")
    return {
      ...place,
      ...nothing,
      means,
      flags: [...flags, `too few readings: ${oval.distinctAngles} different angles; write ${oval.write}`],
    };
  const { standardErrors: errors } = oval;
  return {
    ...place,
    meanIn: roundTo(oval.meanMm / 25.4, 6),
    meanMm: roundTo(oval.meanMm, 6),
    ovalityThou: roundTo((4 * oval.amplitudeMm) / mmPerThou, 3),
    ovalityMm: roundTo(4 * oval.amplitudeMm, 6),
    amplitudeMm: roundTo(oval.amplitudeMm, 6),
    directionDeg: roundTo(oval.widestDeg, 4),
    standardErrors: errors
      ? {
          meanMm: roundTo(errors.meanMm, 6),
          ovalityThou: roundTo((4 * errors.amplitudeMm) / mmPerThou, 3),
          amplitudeMm: roundTo(errors.amplitudeMm, 6),
          directionDeg: roundTo(errors.widestDeg, 3),
        }
      : null,
    press: pressOf(section),
    dent: dentOf(section),
    residualsThou: oval.residualsMm.map((mm) => roundTo(mm / mmPerThou, 3)),
    means,
    flags: [...flags, ...oval.notes, ...dentFlags(section)],
  };
}

const nothing = {
  meanIn: null,
  meanMm: null,
  ovalityThou: null,
  ovalityMm: null,
  amplitudeMm: null,
  directionDeg: null,
  standardErrors: null,
  press: null,
  dent: null,
  residualsThou: [],
} as const;

function pressOf({ press }: BoreSection): GaugedSection["press"] {
  if (press.kind !== "press") return null;
  const [one, other] = press.atDeg;
  return {
    atDeg: [roundTo(one, 1), roundTo(other, 1)],
    plusMinusDeg: roundTo(press.plusMinusDeg, 1),
    chance: roundTo(press.chance, 4),
  };
}

function dentOf({ dent, besideDent }: BoreSection): GaugedSection["dent"] {
  if (dent.kind !== "dent" && dent.kind !== "high") return null;
  const beside = besideDent.kind === "fitted" ? besideDent : undefined;
  return {
    kind: dent.kind,
    angleDeg: dent.angleDeg,
    residualThou: roundTo(dent.residualMm / mmPerThou, 2),
    standardErrorThou: roundTo(dent.standardErrorMm / mmPerThou, 2),
    besideOvalityThou: beside ? roundTo((4 * beside.amplitudeMm) / mmPerThou, 3) : null,
    besideDirectionDeg: beside ? roundTo(beside.widestDeg, 4) : null,
  };
}

function dentFlags({ dent, press }: BoreSection): string[] {
  return [
    ...(press.kind === "not shown" ? ["undecided: the readings scatter as much as the oval is large"] : []),
    ...(dent.kind === "too few readings" ? [`too few readings: ${dent.write}`] : []),
    ...(dent.kind === "dent" || dent.kind === "high"
      ? [`stands out: the reading at ${dent.angleDeg} degrees; take it again`]
      : []),
  ];
}
