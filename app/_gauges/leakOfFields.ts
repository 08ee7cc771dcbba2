import { type LeakRate, leakAt, leakRate } from "@/lib/gauging/fits/leakRate";
import {
  flowUnits,
  pressureUnits,
  readAmount,
  timeUnits,
  volumeUnits,
} from "@/lib/gauging/lengths/readAmount";
import type { GaugesFields } from "./gaugesFields";

/** What a leak reading comes to: its rate at playing pressure and against a sound one, or what is to be written otherwise. */
export type FoundLeak =
  | Readonly<{ kind: "none" }>
  | Readonly<{ kind: "write"; faults: readonly string[] }>
  | Readonly<{ kind: "leak"; read: LeakRate; mlPerMinute: number; times: number | null }>;

const fallNames = ["leakv", "leakp", "leakq", "leakt"] as const;
const flowNames = ["leakf", "leakfp"] as const;
const units = {
  leakv: volumeUnits,
  leakp: pressureUnits,
  leakq: pressureUnits,
  leakt: timeUnits,
  leakf: flowUnits,
  leakfp: pressureUnits,
  leakgood: flowUnits,
} as const;

/** Reads a leak by the fall of a pressure, or by a flow meter where that was filled in. */
export function leakOfFields(fields: GaugesFields): FoundLeak {
  const filled = (names: readonly (keyof typeof units)[]) => names.filter((name) => fields[name]);
  const isFlow = filled(flowNames).length > 0;
  const names: readonly (keyof typeof units)[] = isFlow ? flowNames : fallNames;
  if (filled(names).length === 0) return { kind: "none" };
  const faults: string[] = [];
  const amount = (name: keyof typeof units) => {
    const read = readAmount(fields[name] ?? "", units[name]);
    if (read.kind === "amount") return read.value;
    if (fields[name]) faults.push(`${read.got}: write ${read.write}`);
    return undefined;
  };
  const [a, b, c, d] = names.map(amount);
  const good = fields.leakgood ? amount("leakgood") : undefined;
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
