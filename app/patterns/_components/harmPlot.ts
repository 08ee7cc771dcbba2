import { axisX, barX, dot, gridX, link, type PlotOptions, ruleX, text, tickX } from "@observablehq/plot";
import type { HarmRate } from "@/lib/patterns/harmRates";
import styles from "./Plot.module.css";
import { rowHeight } from "./paretoPlot";

/** A repair's rate of harm with its name and the address of the cases in which it did harm. */
export type HarmRow = HarmRate & Readonly<{ label: string; href: string }>;
const letter = 15;

/** How often each repair did harm, a point, and between which rates that leaves it, a caliper; in 100. */
export function harmPlot(rows: readonly HarmRow[], width: number): PlotOptions {
  const y = "repair";
  // To the next quarter past the widest jaw.
  const end = 25 * Math.ceil(4 * Math.max(...rows.map(({ high }) => high)));
  const ticks = Array.from({ length: end / 25 + 1 }, (_, at) => 25 * at);
  const jaw = (end: "low" | "high") =>
    tickX(rows, {
      x: (row: HarmRow) => 100 * row[end],
      y,
      insetTop: 25,
      insetBottom: 7,
      className: styles.jaws ?? "",
    });
  return {
    width,
    height: rows.length * rowHeight + 44,
    marginTop: 30,
    marginBottom: 14,
    marginLeft: 8,
    marginRight: 24,
    x: { domain: [0, end] },
    y: { domain: rows.map(({ repair }) => repair), axis: null, padding: 0 },
    marks: [
      gridX(ticks, { className: styles.grid ?? "", strokeOpacity: 1, ariaHidden: "true" }),
      axisX(ticks, { anchor: "top", className: styles.scale ?? "", label: null, ariaHidden: "true" }),
      ruleX([0], { className: styles.edge ?? "" }),
      link(rows, {
        x1: ({ low }: HarmRow) => 100 * low,
        x2: ({ high }: HarmRow) => 100 * high,
        y1: y,
        y2: y,
        dy: 9,
        className: styles.jaws ?? "",
      }),
      jaw("low"),
      jaw("high"),
      dot(rows, {
        x: ({ harmed, done }: HarmRow) => (100 * harmed) / done,
        y,
        dy: 9,
        r: 5.5,
        className: styles.rate ?? "",
      }),
      text(rows, {
        x: 0,
        y,
        dx: 4,
        dy: -12,
        textAnchor: "start",
        text: ({ label, harmed, done }: HarmRow) => `${label}, ${harmed} of ${done}`,
        lineWidth: width / letter - 2,
        textOverflow: "ellipsis-middle",
        className: styles.label ?? "",
        ariaHidden: "true",
      }),
      barX(rows, {
        x1: 0,
        x2: end,
        y,
        className: styles.hit ?? "",
        href: "href",
        title: ({ label, harmed, done }: HarmRow) => `${label}: harm in ${harmed} of ${done} jobs`,
      }),
    ],
  };
}
