import type { Case } from "./caseFile";

/** How a job's minutes stood against its quote: well under it, as good as held, over it, far over it. */
export const quoteStandings = ["under", "held", "over", "far-over"] as const;
export type QuoteStanding = (typeof quoteStandings)[number];

/** Up to these multiples of the quoted minutes a job stands where it says; whatever took longer went far over. Chosen. */
export const quoteLimits = { under: 0.8, held: 1.1, over: 1.5 } as const;

/**
 * Tells how a finished job stood against its quote.
 *
 * @returns undefined where the job is open, or minutes or quote were not written down
 * @example quoteStanding({ status: "closed", minutes: 46, quoted: { minutes: 45, price: 54 } }) // "held"
 */
export function quoteStanding({
  status,
  minutes,
  quoted,
}: Pick<Case, "status" | "minutes" | "quoted">): QuoteStanding | undefined {
  if (status === "open" || minutes === undefined || quoted === undefined) return undefined;
  if (minutes <= quoteLimits.under * quoted.minutes) return "under";
  if (minutes <= quoteLimits.held * quoted.minutes) return "held";
  return minutes <= quoteLimits.over * quoted.minutes ? "over" : "far-over";
}
