import { z } from "zod";

/** A part of one instrument, parsed: its id, its number where it has one, or `others` for all its siblings. */
export type PartRef = Readonly<{ part: string; place?: number; others: boolean }>;

const pattern = /^(other )?([a-z0-9]+(?:-[a-z0-9]+)*)(?: ([1-9][0-9]?))?$/;

/** A part as written in a case file: `casing`, `casing 2`, or `other casing` for the siblings of the troubled one. */
export const partRefSchema = z
  .string()
  .regex(pattern, "a part id with its number, such as: casing 2, bell-stem, other valve")
  .max(80);

/**
 * Takes a written part apart.
 *
 * @param text `casing 2`, `bell-stem` or `other valve`
 * @returns the parsed reference, or undefined when the text is none
 * @example parsePartRef("casing 2") // { part: "casing", place: 2, others: false }
 */
export function parsePartRef(text: string): PartRef | undefined {
  const match = pattern.exec(text);
  if (!match?.[2]) return undefined;
  return {
    part: match[2],
    others: match[1] !== undefined,
    ...(match[3] === undefined ? {} : { place: Number(match[3]) }),
  };
}

/**
 * Writes a reference back as in a case file.
 *
 * @example formatPartRef({ part: "casing", place: 2, others: false }) // "casing 2"
 */
export function formatPartRef(ref: PartRef): string {
  return `${ref.others ? "other " : ""}${ref.part}${ref.place === undefined ? "" : ` ${ref.place}`}`;
}
