import { lengthWords } from "../../gauging/lengths/lengthWords";
import { splayWords } from "../../gauging/slides/splayWords";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { type LegsReading, readLegs } from "../understand/readReadings";
import type { GaugedLegs } from "./gaugeAnswer";
import { roundTo } from "./roundTo";

const mmPerThou = 0.0254;

/** Turns the distances across two legs into numbers, words and flags. */
export function gaugeLegs(part: string, reading: LegsReading, vocabulary: Vocabulary): GaugedLegs {
  const { splay, flags } = readLegs(undefined, reading, vocabulary).result;
  const means = splayWords(splay, lengthWords("both"));
  if (splay.kind === "too few places")
    return {
      part,
      splayThou: null,
      splayMm: null,
      angleDeg: null,
      means,
      flags: [...flags, `too few readings: write ${splay.write}`],
    };
  const { leastMm, mostMm, angleDeg } = splay;
  return {
    part,
    splayThou: { low: roundTo(leastMm / mmPerThou, 2), high: roundTo(mostMm / mmPerThou, 2) },
    splayMm: { low: roundTo(leastMm, 5), high: roundTo(mostMm, 5) },
    angleDeg: roundTo(angleDeg, 4),
    means,
    flags,
  };
}
