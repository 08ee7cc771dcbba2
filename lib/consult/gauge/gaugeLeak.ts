import { leakWords } from "../../gauging/fits/leakWords";
import { type LeakReading, readLeak } from "../../gauging/fits/readLeak";
import type { GaugedLeak } from "./gaugeAnswer";
import { roundTo } from "./roundTo";

/** Turns a leak reading into numbers, words and flags. */
export function gaugeLeak(reading: LeakReading): GaugedLeak {
  const leak = readLeak(reading);
  if (leak.kind !== "leak") {
    const flags = leak.kind === "write" ? leak.faults : ["nothing read: write a fall of pressure, or a flow"];
    return { mlPerMinute: null, atPa: null, atPlayingMlPerMinute: null, timesSound: null, means: [], flags };
  }
  const { read, mlPerMinute, times } = leak;
  return {
    mlPerMinute: roundTo(read.mlPerMinute, 3),
    atPa: roundTo(read.atPa, 1),
    atPlayingMlPerMinute: roundTo(mlPerMinute, 3),
    timesSound: times === null ? null : roundTo(times, 3),
    means: leakWords(leak),
    flags: [],
  };
}
