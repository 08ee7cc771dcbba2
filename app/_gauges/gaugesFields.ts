import { splitLength } from "@/lib/gauging/lengths/splitLength";
import { splitLengths } from "@/lib/gauging/lengths/splitLengths";
import type { ShownUnit } from "../_components/readUnit";

/** Everything on the page as it stands in the address: a field's name and its text, empty ones left out. */
export type GaugesFields = Readonly<Record<string, string>>;
type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Depths at which one bore can be measured here. */
export const mostSections = 6;
export const angleCounts = [4, 6, 9, 12] as const;
export const valveCounts = [2, 3, 4, 5] as const;

const longestField = 200;
const names =
  /^(part|sib|pm|piston|depth|passes|stops|spasses|sstops|angles|valves|unit|legs|lpm|leakv|leakp|leakq|leakt|leakf|leakfp|leakgood)$/;
const sectionName = /^d([1-6])(?:-(\d{1,3}(?:\.\d)?))?$/;
const legName = /^l([1-6])w?$/;
/** A pair's result; with a letter behind it where it rubbed (w), which way (y), how it was turned (t). */
const swapName = /^s([1-5])-([1-5])[wyt]?$/;

/** The fields that hold lengths, and may hold several. */
export const isLengthField = (name: string) =>
  /^(pm|lpm|piston|depth|passes|stops|spasses|sstops)$/.test(name) ||
  sectionName.test(name) ||
  legName.test(name);

/**
 * Reads the page's fields from an address. What is no field of it is passed over.
 *
 * `unit` is the unit of numbers written without one, inches where an address does not say. Where another is shown they get
 * theirs written behind them first, so that switching never changes what was measured.
 *
 * @param shown the unit that lengths are written and shown in from now on
 */
export function readGaugesFields(params: SearchParams, shown: ShownUnit): GaugesFields {
  const kept = Object.entries(params).flatMap(([name, value]): [string, string][] => {
    const text = (typeof value === "string" ? value : value?.[0])?.trim().slice(0, longestField);
    return text && (names.test(name) || sectionName.test(name) || legName.test(name) || swapName.test(name))
      ? [[name, text]]
      : [];
  });
  const written = unitOf(Object.fromEntries(kept));
  const spelled = kept.map(([name, text]) => [
    name,
    written !== shown && isLengthField(name) ? spellUnits(text, written) : text,
  ]);
  return { ...Object.fromEntries(spelled), unit: shown === "mm" ? "mm" : "in" };
}

/** Whether anything was filled in. */
export const isFilled = ({ unit: _, ...fields }: GaugesFields) => Object.keys(fields).length > 0;

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

/**
 * The address of a page with these fields.
 *
 * @param path default the Gauges page itself
 */
export function gaugesHref(fields: GaugesFields, path = "/gauges"): string {
  const search = new URLSearchParams(fields).toString();
  return search ? `${path}?${search}` : path;
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

/** Places down a slide to lay out: those with something in them and one more, three at the least. */
export function legNumbers(fields: GaugesFields): readonly number[] {
  const used = Object.keys(fields).flatMap((name) => Number(legName.exec(name)?.[1] ?? 0));
  const count = Math.min(mostSections, Math.max(2, ...used) + 1);
  return Array.from({ length: count }, (_, index) => index + 1);
}
