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

const sum = <Item>(items: readonly Item[], of: (item: Item) => number | undefined) =>
  items.reduce((total, item) => total + (of(item) ?? 0), 0);

/** Adds up what was quoted, what it took, what was charged and what the shop swallowed; jobs still open do not count. */
export function quoteRecord(cases: readonly Case[]): QuoteRecord {
  const jobs = cases.filter(({ status }) => status === "closed");
  const timed = jobs.filter((kase) => quoteStanding(kase) !== undefined);
  const priced = jobs.filter(({ charge, quoted }) => charge !== undefined && quoted !== undefined);
  const swallowing = jobs.filter(({ swallowed }) => swallowed !== undefined);
  const standing = (asked: QuoteStanding) => timed.filter((kase) => quoteStanding(kase) === asked).length;
  return {
    jobs: jobs.length,
    timed: timed.length,
    standings: {
      under: standing("under"),
      held: standing("held"),
      over: standing("over"),
      "far-over": standing("far-over"),
    },
    quotedMinutes: sum(timed, ({ quoted }) => quoted?.minutes),
    tookMinutes: sum(timed, ({ minutes }) => minutes),
    priced: priced.length,
    quotedPrice: sum(priced, ({ quoted }) => quoted?.price),
    charged: sum(priced, ({ charge }) => charge),
    swallowing: swallowing.length,
    swallowedMinutes: sum(swallowing, ({ swallowed }) => swallowed?.minutes),
    swallowedMoney: sum(swallowing, ({ swallowed }) => swallowed?.money),
  };
}
