import type { Case } from "../casebook/caseFile";
import { type QuoteStanding, quoteStanding } from "../casebook/quoteStanding";

/**
 * How finished jobs came out against their quotes. Minutes are summed over the `timed` jobs only, those with minutes and a
 * quote; money over the `priced` ones, with a charge and a quote; what the shop swallowed over the `swallowing` ones.
 */
export type QuoteRecord = Readonly<{
  jobs: number;
  timed: number;
  standings: Readonly<Record<QuoteStanding, number>>;
  quotedMinutes: number;
  tookMinutes: number;
  priced: number;
  quotedPrice: number;
  charged: number;
  swallowing: number;
  swallowedMinutes: number;
  swallowedMoney: number;
}>;

/** Adds up what was quoted, what it took, what was charged and what the shop swallowed; jobs still open do not count. */
export function quoteRecord(cases: Iterable<Case>): QuoteRecord {
  const standings = { under: 0, held: 0, over: 0, "far-over": 0 };
  const sums = {
    jobs: 0,
    timed: 0,
    quotedMinutes: 0,
    tookMinutes: 0,
    priced: 0,
    quotedPrice: 0,
    charged: 0,
    swallowing: 0,
    swallowedMinutes: 0,
    swallowedMoney: 0,
  };
  for (const kase of cases) {
    const { status, minutes, quoted, charge, swallowed } = kase;
    if (status === "open") continue;
    sums.jobs += 1;
    const standing = quoteStanding(kase);
    if (standing !== undefined) {
      standings[standing] += 1;
      sums.timed += 1;
      sums.quotedMinutes += quoted?.minutes ?? 0;
      sums.tookMinutes += minutes ?? 0;
    }
    if (charge !== undefined && quoted !== undefined) {
      sums.priced += 1;
      sums.quotedPrice += quoted.price;
      sums.charged += charge;
    }
    if (swallowed !== undefined) {
      sums.swallowing += 1;
      sums.swallowedMinutes += swallowed.minutes;
      sums.swallowedMoney += swallowed.money;
    }
  }
  return { ...sums, standings };
}
