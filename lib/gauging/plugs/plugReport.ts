import { type Clearance, clearance } from "../fits/clearance";
import { type LeakRatio, leakRatio } from "../fits/leakRatio";
import { type NamedFit, nameFit } from "../fits/nameFit";
import type { LengthUnit } from "../lengths/lengthUnit";
import { readSize, type SizeKind } from "../lengths/readSize";
import { sizeFlag } from "../lengths/sizeFlag";
import { type PlugBracket, plugBracket } from "./plugBracket";
import { type Reduction, reduction } from "./reduction";

/** Plugs as they were written down, from one end to one depth. */
export type WrittenPlugs = Readonly<{
  passes: readonly string[];
  stops: readonly string[];
  depth?: string | undefined;
}>;
export type WrittenPiston = Readonly<{ diameter: string; plusMinus?: string | undefined }>;

/** A bracket with the depth that it holds for; null where none was written. */
export type BracketAtDepth = PlugBracket & Readonly<{ depthMm: number | null }>;

/** Everything that plugs in one bore say; null where there is nothing to say it from. */
export type PlugReport = Readonly<{
  bore: BracketAtDepth;
  reference: BracketAtDepth | null;
  reduction: Reduction | null;
  /** `plusMinusMm` is null where none was written: the diameter is then taken as exact. */
  piston: Readonly<{ diameterMm: number; plusMinusMm: number | null }> | null;
  clearance: Clearance | null;
  fit: NamedFit | null;
  leak: LeakRatio | null;
  /** In words, each beginning with its kind: contradiction, undecided, open, implausible unit, unreadable, too few readings, no reference. */
  flags: readonly string[];
}>;

/** Depths nearer than this are one depth: nobody slides a plug more exactly. Chosen. */
const sameDepthMm = 0.5;

/**
 * Reads the plugs of one bore, as written, against a sound sibling and the piston's micrometer reading.
 *
 * @param written the bore's plugs, its reference's and the piston; a reference without any plug counts as none
 * @param expects the unit of numbers that were written without one; default none, and they are asked about
 * @returns see `PlugReport`; lengths that cannot be counted are flagged and left out
 * @example plugReport({ passes: [".669"], stops: [".671"] }).bore.lowMm // 16.9926
 * Source: see `plugBracket`, `reduction`, `clearance`, `nameFit` and `leakRatio`.
 */
export function plugReport(
  written: WrittenPlugs &
    Readonly<{ reference?: WrittenPlugs | undefined; piston?: WrittenPiston | undefined }>,
  expects?: LengthUnit,
): PlugReport {
  const flags: string[] = [];
  const read = (text: string, kind: SizeKind, place: string) => {
    const size = readSize(text, kind, expects);
    if (size.kind === "length") return size.mm;
    flags.push(sizeFlag(size, place) ?? "");
    return undefined;
  };
  const bracketOf = ({ passes, stops, depth }: WrittenPlugs, place: string): BracketAtDepth => {
    const sizes = (texts: readonly string[]) => texts.flatMap((text) => read(text, "diameter", place) ?? []);
    const bracket = plugBracket({ passesMm: sizes(passes), stopsMm: sizes(stops) });
    for (const { passedMm, stoppedMm } of bracket.contradictions)
      flags.push(
        `contradiction: ${place === "" ? "" : `in ${place} `}${inches(passedMm)} passed where ${inches(stoppedMm)} stopped; try both again`,
      );
    return { ...bracket, depthMm: depth === undefined ? null : (read(depth, "depth", place) ?? null) };
  };

  const bore = bracketOf(written, "");
  const isOpen = (bracket: BracketAtDepth) => bracket.lowMm === null && bracket.highMm === null;
  if (isOpen(bore) && bore.contradictions.length === 0)
    flags.push("too few readings: no plug bounds this bore; write which passed and which stopped");

  const { reference: sibling } = written;
  const hasReference = sibling !== undefined && sibling.passes.length + sibling.stops.length > 0;
  const reference = hasReference ? bracketOf(sibling, "the reference") : null;
  const reduced = reference && reduction(bore, reference);
  if (!reduced) flags.push("no reference: gauge a sound sibling at the same depth to know the reduction");
  else {
    const settled = bore.contradictions.length === 0 && !isOpen(bore);
    if (reduced.standing === "undecided" && settled)
      flags.push("undecided: the brackets overlap; try the plugs between");
    flags.push(...reduced.missing.map((what) => `open: needs ${what}`));
    const [here, there] = [bore.depthMm, reference?.depthMm ?? null];
    if (here !== null && there !== null && Math.abs(here - there) > sameDepthMm)
      flags.push("different depths: the reference was gauged at another depth; gauge both at the same one");
  }

  const diameterMm = written.piston && read(written.piston.diameter, "diameter", "the piston");
  const plusMinus = written.piston?.plusMinus;
  const plusMinusMm =
    plusMinus === undefined ? 0 : read(plusMinus, "uncertainty", "the piston's give or take");
  // An error that cannot be read is not none: without it the clearance's bounds would claim too much.
  if (diameterMm === undefined || plusMinusMm === undefined)
    return {
      bore,
      reference,
      reduction: reduced,
      piston: null,
      clearance: null,
      fit: null,
      leak: null,
      flags,
    };
  const piston = { diameterMm, plusMinusMm: plusMinus === undefined ? null : plusMinusMm };
  const gap = clearance(bore, { diameterMm, plusMinusMm });
  if (gap.standing === "undecided" && !isOpen(bore))
    flags.push("undecided: the piston's size lies within the bore's bracket; try plugs nearer to it");
  return {
    bore,
    reference,
    reduction: reduced,
    piston,
    clearance: gap,
    fit: nameFit(gap, diameterMm),
    leak: leakRatio(gap) ?? null,
    flags,
  };
}

const inches = (mm: number) => `${(mm / 25.4).toFixed(4).replace(/^0/, "")} in`;
