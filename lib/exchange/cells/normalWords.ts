/**
 * Words as headings and choices are compared: lower-case, without accents, signs for blanks.
 *
 * @example normalWords("  Date-IN (shop) ") // "date in shop"
 */
export const normalWords = (text: string) =>
  text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
