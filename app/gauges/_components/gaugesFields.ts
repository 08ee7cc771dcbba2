import { splitLength } from "@/lib/gauging/splitLength";
import { splitLengths } from "@/lib/gauging/splitLengths";

/** Everything on the page as it stands in the address: a field's name and its text, empty ones left out. */
export type GaugesFields = Readonly<Record<string, string>>;
export type ShownUnit = "inch" | "mm";
type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Depths at which one bore can be measured here. */
const mostSections = 6;
export const angleCounts = [4, 6, 9, 12] as const;
export const valveCounts = [2, 3, 4, 5] as const;

const longestField = 200;
const names = /^(part|sib|pm|piston|depth|passes|stops|spasses|sstops|angles|valves|unit|show)$/;
const sectionName = /^d([1-6])(?:-(\d{1,3}(?:\.\d)?))?$/;
/** A pair's result; with a letter behind it where it rubbed (w), which way (y), how it was turned (t). */
const swapName = /^s([1-5])-([1-5])[wyt]?$/;

/** The fields that hold lengths, and may hold several. */
export const isLengthField = (name: string) =>
  /^(pm|piston|depth|passes|stops|spasses|sstops)$/.test(name) || sectionName.test(name);

/**
 * Reads the page's fields from an address. What is no field of it is passed over.
 *
 * `unit` is the unit of numbers written without one; where `show` asks for the other, they get their unit written behind them first,
 * so that switching never changes what was measured.
 */
export function readGaugesFields(params: SearchParams): GaugesFields {
  const fields = Object.entries(params).flatMap(([name, value]): [string, string][] => {
    const text = (typeof value === "string" ? value : value?.[0])?.trim().slice(0, longestField);
    return text && (names.test(name) || sectionName.test(name) || swapName.test(name)) ? [[name, text]] : [];
  });
  const { show, ...kept } = Object.fromEntries(fields);
  const unit = unitOf(kept);
  if (show === undefined || unitOf({ unit: show }) === unit) return kept;
  const spelled = Object.entries(kept).map(([name, text]) => [
    name,
    isLengthField(name) ? spellUnits(text, unit) : text,
  ]);
  return { ...Object.fromEntries(spelled), unit: show === "mm" ? "mm" : "in" };
}

export const unitOf = ({ unit }: GaugesFields): ShownUnit => (unit === "mm" ? "mm" : "inch");

/** A length with its unit: one written without any is in the page's. A fraction is inches anyway. */
export function withUnit(text: string, unit: ShownUnit): string {
  const split = splitLength(text);
  if (split?.unitWord !== "" || split.fraction || split.amount === 0) return text;
  return `${split.written} ${unit === "mm" ? "mm" : "in"}`;
}

const spellUnits = (text: string, unit: ShownUnit) =>
  splitLengths(text)
    .map((length) => withUnit(length, unit))
    .join("; ");

/** The lengths of one field, each with its unit. */
export const lengthsOf = (fields: GaugesFields, name: string): readonly string[] =>
  splitLengths(fields[name] ?? "").map((text) => withUnit(text, unitOf(fields)));

/** The address of the page with these fields. */
export function gaugesHref(fields: GaugesFields): string {
  const search = new URLSearchParams(fields).toString();
  return search ? `/gauges?${search}` : "/gauges";
}

const oneOf = <T extends number>(text: string | undefined, choices: readonly T[], otherwise: T): T =>
  choices.find((choice) => String(choice) === text) ?? otherwise;

export const valvesOf = (fields: GaugesFields) => oneOf(fields.valves, valveCounts, 3);
export const angleCountOf = (fields: GaugesFields) => oneOf(fields.angles, angleCounts, 6);

/** The angles to read at: evenly over the half turn, and any others that a reading stands at. */
export function anglesOf(fields: GaugesFields): readonly number[] {
  const count = angleCountOf(fields);
  const even = Array.from({ length: count }, (_, index) => (180 * index) / count);
  const read = Object.keys(fields).flatMap((name) => sectionName.exec(name)?.[2] ?? []);
  return [...new Set([...even, ...read.map(Number)])].sort((a, b) => a - b);
}

/** Sections to lay out: those with something in them, and one more to fill in. */
export function sectionNumbers(fields: GaugesFields): readonly number[] {
  const used = Object.keys(fields).flatMap((name) => Number(sectionName.exec(name)?.[1] ?? 0));
  const count = Math.min(mostSections, Math.max(0, ...used) + 1);
  return Array.from({ length: count }, (_, index) => index + 1);
}
