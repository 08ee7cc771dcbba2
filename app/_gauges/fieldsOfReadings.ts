import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { type GaugesFields, mostSections } from "./gaugesFields";

/**
 * Readings as the page's fields: the plugs that were tried last, the sections of the same bore, and all swaps. What the page
 * has no field for is left out.
 */
export function fieldsOfReadings({
  gauges,
  diameters,
  swaps,
}: Pick<ReadingsInput, "gauges" | "diameters" | "swaps">): GaugesFields {
  const gauge = gauges.at(-1);
  const part = gauge?.part ?? diameters.at(-1)?.part;
  const sections = diameters.filter((section) => section.part === part).slice(-mostSections);
  const list = (texts: readonly string[] = []) => texts.join("; ");
  const pairs = swaps.flatMap(({ a, b, result }): (readonly [string, string])[] => {
    const [, guest] = /^piston ([1-5])$/.exec(a) ?? [];
    const [, host] = /^casing ([1-5])$/.exec(b) ?? [];
    return guest && host ? [[`s${guest}-${host}`, result]] : [];
  });
  const most = Math.max(0, ...pairs.flatMap(([name]) => name.slice(1).split("-").map(Number)));
  const fields: (readonly [string, string | undefined])[] = [
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
    ["valves", most > 3 ? String(most) : undefined],
    ...pairs,
  ];
  return Object.fromEntries(fields.flatMap(([name, text]) => (text ? [[name, text]] : [])));
}
