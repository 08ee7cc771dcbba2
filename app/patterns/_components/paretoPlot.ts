import { axisX, barX, dot, gridX, line, type PlotOptions, ruleX, text } from "@observablehq/plot";
import type { ParetoRow } from "@/lib/patterns/paretoRows";
import styles from "./Plot.module.css";

/** A bar with its name, and the address of the cases behind it. */
export type ParetoBar = ParetoRow & Readonly<{ label: string; href: string }>;
/** A row's height leaves room for a finger. */
export const rowHeight = 46;
const letter = 15;
/** The longest bar leaves the line of the running share room beside it. */
const longestBar = 60;

/** The Pareto chart: a bar a value, and the running share of all as a line, in 100. */
export function paretoPlot(bars: readonly ParetoBar[], width: number): PlotOptions {
  const most = Math.max(...bars.map(({ count }) => count));
  const length = ({ count }: ParetoBar) => (longestBar * count) / most;
  const running = (bar: ParetoBar) => 100 * bar.running;
  const y = "value";
  return {
    width,
    height: bars.length * rowHeight + 44,
    marginTop: 30,
    marginBottom: 14,
    marginLeft: 2,
    marginRight: 24,
    x: { domain: [0, 100] },
    y: { domain: bars.map(({ value }) => value), axis: null, padding: 0 },
    marks: [
      gridX([0, 25, 50, 75, 100], { className: styles.grid ?? "", strokeOpacity: 1, ariaHidden: "true" }),
      axisX([0, 25, 50, 75, 100], {
        anchor: "top",
        className: styles.scale ?? "",
        label: null,
        ariaHidden: "true",
      }),
      barX(bars, { x: length, y, insetTop: 22, insetBottom: 4, className: styles.bar ?? "" }),
      ruleX([0], { className: styles.edge ?? "" }),
      line(bars, { x: running, y, dy: 9, className: styles.running ?? "" }),
      dot(bars, { x: running, y, dy: 9, r: 4.5, symbol: "diamond", className: styles.runningAt ?? "" }),
      text(bars, {
        x: length,
        y,
        text: ({ count }: ParetoBar) => String(count),
        textAnchor: "start",
        dx: 6,
        dy: 9,
        ariaHidden: "true",
        className: styles.count ?? "",
      }),
      text(bars, {
        x: 0,
        y,
        text: "label",
        textAnchor: "start",
        dx: 4,
        dy: -12,
        lineWidth: width / letter - 2,
        textOverflow: "ellipsis-end",
        ariaHidden: "true",
        className: styles.label ?? "",
      }),
      barX(bars, {
        x1: 0,
        x2: 100,
        y,
        className: styles.hit ?? "",
        href: "href",
        title: ({ label, count }: ParetoBar) => `${label}: ${count} ${count === 1 ? "job" : "jobs"}`,
      }),
    ],
  };
}
