import { axisX, barX, gridX, type PlotOptions, ruleX, text } from "@observablehq/plot";
import { quoteWord } from "@/app/_components/quoteWord";
import type { QuoteStanding } from "@/lib/casebook/quoteStanding";
import type { QuoteRecord } from "@/lib/patterns/quoteRecord";
import styles from "./Plot.module.css";
import { rowHeight } from "./paretoPlot";

/** The jobs of one family with minutes and a quote, and the addresses of the cases of each standing. */
export type QuoteRow = QuoteRecord &
  Readonly<{ family: string; label: string; hrefs: Readonly<Record<QuoteStanding, string>> }>;

/** From the middle outward on either side: the quote as good as held and well under it; over it and far over it. */
const places: readonly Readonly<{
  standing: QuoteStanding;
  after: readonly QuoteStanding[];
  side: 1 | -1;
}>[] = [
  { standing: "held", after: [], side: -1 },
  { standing: "under", after: ["held"], side: -1 },
  { standing: "over", after: [], side: 1 },
  { standing: "far-over", after: ["over"], side: 1 },
];
const barClass: Readonly<Record<QuoteStanding, string | undefined>> = {
  under: styles.under,
  held: styles.held,
  over: styles.over,
  "far-over": styles.farOver,
};
/** A narrower piece, pixels, has no room for its number. */
const leastForNumber = 22;

/** What share of each family's jobs held the quote (left of the middle) and ran over it (right), in 100. */
export function quotePlot(rows: readonly QuoteRow[], width: number): PlotOptions {
  const share = ({ standings, timed }: QuoteRow, some: readonly QuoteStanding[]) =>
    (100 * some.reduce((sum, standing) => sum + standings[standing], 0)) / timed;
  const y = "family";
  const ticks = [-100, -50, 0, 50, 100];
  return {
    width,
    height: rows.length * rowHeight + 44,
    marginTop: 30,
    marginBottom: 14,
    marginLeft: 16,
    marginRight: 16,
    x: { domain: [-100, 100] },
    y: { domain: rows.map(({ family }) => family), axis: null, padding: 0 },
    marks: [
      gridX(ticks, { className: styles.grid ?? "", strokeOpacity: 1, ariaHidden: "true" }),
      axisX(ticks, {
        anchor: "top",
        className: styles.scale ?? "",
        label: null,
        tickFormat: (tick: number) => String(Math.abs(tick)),
        ariaHidden: "true",
      }),
      ...places.flatMap(({ standing, after, side }) => {
        const met = rows.filter(({ standings }) => standings[standing] > 0);
        const near = (row: QuoteRow) => side * share(row, after);
        const far = (row: QuoteRow) => side * share(row, [...after, standing]);
        const isFull = standing === "under" || standing === "far-over";
        return [
          barX(met, {
            x1: near,
            x2: far,
            y,
            insetTop: 22,
            insetBottom: 3,
            className: barClass[standing] ?? "",
            href: ({ hrefs }: QuoteRow) => hrefs[standing],
            title: ({ label, standings }: QuoteRow) =>
              `${label}, ${quoteWord(standing).toLowerCase()}: ${standings[standing]}`,
          }),
          text(
            met.filter((row) => (share(row, [standing]) * (width - 32)) / 200 >= leastForNumber),
            {
              x: (row: QuoteRow) => (near(row) + far(row)) / 2,
              y,
              dy: 9,
              text: ({ standings }: QuoteRow) => String(standings[standing]),
              className: (isFull ? styles.onFull : styles.onWash) ?? "",
              pointerEvents: "none",
              ariaHidden: "true",
            },
          ),
        ];
      }),
      ruleX([0], { className: styles.edge ?? "" }),
      text(rows, {
        x: -100,
        y,
        dy: -12,
        textAnchor: "start",
        text: ({ label, timed }: QuoteRow) => `${label}, ${timed} ${timed === 1 ? "job" : "jobs"}`,
        className: styles.label ?? "",
        ariaHidden: "true",
      }),
    ],
  };
}
