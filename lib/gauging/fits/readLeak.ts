import { flowUnits, pressureUnits, readAmount, timeUnits, volumeUnits } from "../lengths/readAmount";
import { type LeakRate, leakAt, leakRate } from "./leakRate";

/**
 * A leak as it was read, every amount with its unit: by the fall of a pressure in a closed volume, or by the flow that holds a
 * pressure; and what a sound one leaks, read in the same way.
 */
export type LeakReading = Readonly<
  Partial<Record<"volume" | "first" | "second" | "after" | "flow" | "at" | "sound", string | undefined>>
>;

/** What a leak reading comes to: its rate at playing pressure and against a sound one, or what is to be written otherwise. */
export type FoundLeak =
  | Readonly<{ kind: "none" }>
  | Readonly<{ kind: "write"; faults: readonly string[] }>
  | Readonly<{ kind: "leak"; read: LeakRate; mlPerMinute: number; times: number | null }>;

const fallNames = ["volume", "first", "second", "after"] as const;
const flowNames = ["flow", "at"] as const;
const units = {
  volume: volumeUnits,
  first: pressureUnits,
  second: pressureUnits,
  after: timeUnits,
  flow: flowUnits,
  at: pressureUnits,
  sound: flowUnits,
} as const;

/** Reads a leak by the fall of a pressure, or by a flow meter where that was filled in. It never throws. */
export function readLeak(reading: LeakReading): FoundLeak {
  const filled = (names: readonly (keyof typeof units)[]) => names.filter((name) => reading[name]);
  const isFlow = filled(flowNames).length > 0;
  const names: readonly (keyof typeof units)[] = isFlow ? flowNames : fallNames;
  if (filled(names).length === 0) return { kind: "none" };
  const faults: string[] = [];
  const amount = (name: keyof typeof units) => {
    const read = readAmount(reading[name] ?? "", units[name]);
    if (read.kind === "amount") return read.value;
    if (reading[name]) faults.push(`${read.got}: write ${read.write}`);
    return undefined;
  };
  const [a, b, c, d] = names.map(amount);
  const good = reading.sound ? amount("sound") : undefined;
  if (faults.length > 0) return { kind: "write", faults };
  if (filled(names).length < names.length || a === undefined || b === undefined)
    return {
      kind: "write",
      faults: [isFlow ? "both flow and pressure" : "volume, both pressures and the time"],
    };
  const read = isFlow ? rateOfFlow(a, b) : rateOfFall(a, b, c ?? 0, d ?? 0);
  if (!read)
    return {
      kind: "write",
      faults: [
        isFlow
          ? "a flow of 0 or more at a pressure that is not 0"
          : "a pressure that falls toward the room's, and a volume and time over 0",
      ],
    };
  const mlPerMinute = leakAt(read);
  return { kind: "leak", read, mlPerMinute, times: good && good > 0 ? mlPerMinute / good : null };
}

const rateOfFlow = (mlPerMinute: number, atPa: number): LeakRate | undefined =>
  mlPerMinute >= 0 && atPa !== 0 ? { mlPerMinute, atPa } : undefined;

function rateOfFall(volumeMl: number, firstPa: number, secondPa: number, seconds: number) {
  try {
    return leakRate({ volumeMl, firstPa, secondPa, seconds });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
