import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import type { TappedSwap } from "../_bench/benchQuery";
import { type GaugesFields, mostSections } from "./gaugesFields";
import { leakNames } from "./gaugesInput";

/**
 * Readings as the page's fields: the plugs that were tried last, the sections of the same bore, all swaps and the last leak. What the page
 * has no field for is left out.
 */
export function fieldsOfReadings({
  gauges,
  diameters,
  swaps,
  leaks,
}: Pick<ReadingsInput, "gauges" | "diameters" | "leaks"> &
  Readonly<{ swaps: readonly TappedSwap[] }>): GaugesFields {
  const gauge = gauges.at(-1);
  const part = gauge?.part ?? diameters.at(-1)?.part;
  const sections = diameters.filter((section) => section.part === part).slice(-mostSections);
  const list = (texts: readonly string[] = []) => texts.join("; ");
  const pairs = swaps.flatMap(({ guest, host, result, where, way, turned }) => {
    const [, row] = /^piston ([1-5])$/.exec(guest) ?? [];
    const [, column] = /^casing ([1-5])$/.exec(host) ?? [];
    const name = `s${row}-${column}`;
    const told: (readonly [string, string | null])[] = [
      [name, result],
      [`${name}w`, where],
      [`${name}y`, way],
      [`${name}t`, turned],
    ];
    return row && column ? told : [];
  });
  const most = Math.max(0, ...pairs.flatMap(([name]) => name.match(/\d/g)?.map(Number) ?? []));
  const fields: (readonly [string, string | null | undefined])[] = [
    ["part", part],
    ["depth", gauge?.depth],
    ["passes", list(gauge?.passes)],
    ["stops", list(gauge?.stops)],
    ["sib", gauge?.reference?.part],
    ["spasses", list(gauge?.reference?.passes)],
    ["sstops", list(gauge?.reference?.stops)],
    ["piston", gauge?.piston?.diameter],
    ["pm", gauge?.piston?.plusMinus],
    ...sections.flatMap(({ depth, readings }, at): (readonly [string, string | undefined])[] => [
      [`d${at + 1}`, depth],
      ...readings.map(({ angle, diameter }) => [`d${at + 1}-${angle}`, diameter] as const),
    ]),
    ...Object.entries(leakNames).map(([name, of]) => [name, leaks.at(-1)?.[of]] as const),
    ["valves", most > 3 ? String(most) : undefined],
    ...pairs,
  ];
  return Object.fromEntries(fields.flatMap(([name, text]) => (text ? [[name, text]] : [])));
}
