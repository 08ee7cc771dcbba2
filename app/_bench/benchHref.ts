import type { BenchQuery } from "./benchQuery";

/** The fields of a bench's address, but for what is said and on which instrument. */
export function benchFields({
  findings,
  leftOut,
  swaps,
}: BenchQuery): readonly (readonly [string, string])[] {
  return [
    ...findings.map(
      ({ check, outcome, part }) => ["e", [check, outcome, ...(part ? [part] : [])].join(":")] as const,
    ),
    ...leftOut.map((finding) => ["x", finding] as const),
    ...swaps.map(
      ({ guest, host, result, where, way, turned }) =>
        ["swap", [guest, host, result, where, way, turned].join("|").replace(/\|+$/, "")] as const,
    ),
  ];
}

/**
 * The address of a bench: whoever opens it sees the same evidence.
 *
 * @param path where the bench is taken to; default the bench page itself
 * @param plan whether the whole plan is asked for as well; default not
 */
export function benchHref(query: BenchQuery, path = "/", plan = false): string {
  const params = new URLSearchParams();
  if (plan) params.append("plan", "1");
  if (query.instrument) params.append("instrument", query.instrument);
  for (const [key, value] of benchFields(query)) params.append(key, value);
  // Last, because it is the longest: a cut-off address loses words before it loses what was tapped.
  if (query.says) params.append("says", query.says);
  const search = params.toString();
  return search ? `${path}?${search}` : path;
}
