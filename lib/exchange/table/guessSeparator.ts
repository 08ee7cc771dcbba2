const separators = [",", ";", "\t", "|"] as const;

/** What stands between the cells of a row. */
export type Separator = (typeof separators)[number];

/**
 * Finds what separates the cells of a table: the one of comma, semicolon, tab and bar that stands most often outside quotes
 * in its first row; the comma where none does.
 *
 * @example guessSeparator('Job;"Fault, in words"\n1;leaks') // ";"
 */
export function guessSeparator(text: string): Separator {
  const counts = new Map<string, number>(separators.map((one) => [one, 0]));
  let quoted = false;
  for (const sign of text) {
    if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === "\n" || sign === "\r")) break;
    else if (!quoted && counts.has(sign)) counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  return separators.reduce((best, one) => ((counts.get(one) ?? 0) > (counts.get(best) ?? 0) ? one : best));
}
