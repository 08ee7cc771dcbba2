import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { type LeakReading, readLeak } from "@/lib/gauging/fits/readLeak";
import { idSchema } from "@/lib/vocabulary/words";
import { swapResultSchema, type TappedSwap } from "../_bench/benchQuery";
import { swapInput } from "../_bench/swapInput";
import { anglesOf, type GaugesFields, legNumbers, lengthsOf, sectionNumbers, valvesOf } from "./gaugesFields";

/** The page's fields of a leak, and what each is in a reading. */
export const leakNames = {
  leakv: "volume",
  leakp: "first",
  leakq: "second",
  leakt: "after",
  leakf: "flow",
  leakfp: "at",
  leakgood: "sound",
} as const;

/** The page's readings as the engine takes them, every length with its unit. */
export function gaugesInput(fields: GaugesFields): ReadingsInput {
  const { part = "casing 2", sib = "casing 1" } = fields;
  const [passes, stops] = [lengthsOf(fields, "passes"), lengthsOf(fields, "stops")];
  const [spasses, sstops] = [lengthsOf(fields, "spasses"), lengthsOf(fields, "sstops")];
  const [depth] = lengthsOf(fields, "depth");
  const [diameter] = lengthsOf(fields, "piston");
  const [plusMinus] = lengthsOf(fields, "pm");
  const gauged = passes.length + stops.length > 0;
  return {
    gauges: gauged
      ? [
          {
            part,
            ...(depth ? { depth } : {}),
            passes: [...passes],
            stops: [...stops],
            reference: { part: sib, passes: [...spasses], stops: [...sstops] },
            ...(diameter ? { piston: { diameter, ...(plusMinus ? { plusMinus } : {}) } } : {}),
          },
        ]
      : [],
    diameters: sectionNumbers(fields).flatMap((section) => {
      const [at] = lengthsOf(fields, `d${section}`);
      const readings = anglesOf(fields).flatMap((angle) => {
        const [reading] = lengthsOf(fields, `d${section}-${angle}`);
        return reading ? [{ angle, diameter: reading }] : [];
      });
      return readings.length > 0 ? [{ part, ...(at ? { depth: at } : {}), readings }] : [];
    }),
    swaps: swapsOf(fields).map(swapInput),
    legs: legsOf(fields),
    leaks: readLeak(leakOfFields(fields)).kind === "none" ? [] : [leakOfFields(fields)],
  };
}

function legsOf(fields: GaugesFields): ReadingsInput["legs"] {
  const readings = legNumbers(fields).flatMap((number) => {
    const [at] = lengthsOf(fields, `l${number}`);
    const [across] = lengthsOf(fields, `l${number}w`);
    return at && across ? [{ at, across }] : [];
  });
  const [plusMinus] = lengthsOf(fields, "lpm");
  return readings.length > 0
    ? [{ part: fields.legs ?? "inner-leg", ...(plusMinus ? { plusMinus } : {}), readings }]
    : [];
}

/** The leak reading, amounts as they were written. */
export function leakOfFields(fields: GaugesFields): LeakReading {
  const named = Object.entries(leakNames).map(([name, of]) => [of, fields[name]] as const);
  return Object.fromEntries(named.filter(([, text]) => text !== undefined));
}

/** The swaps that were tried, guests named piston and hosts casing, with what their results depended on. */
export function swapsOf(fields: GaugesFields): TappedSwap[] {
  const idOf = (name: string) => idSchema.safeParse(fields[name]).data ?? null;
  const numbers = Array.from({ length: valvesOf(fields) }, (_, index) => index + 1);
  return numbers.flatMap((row) =>
    numbers.flatMap((column) => {
      const name = `s${row}-${column}`;
      const result = swapResultSchema.safeParse(fields[name]);
      if (!result.success) return [];
      const how =
        result.data === "free"
          ? { where: null, way: null, turned: null }
          : { where: idOf(`${name}w`), way: idOf(`${name}y`), turned: idOf(`${name}t`) };
      return [{ guest: `piston ${row}`, host: `casing ${column}`, result: result.data, ...how }];
    }),
  );
}
