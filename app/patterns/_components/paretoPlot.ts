import { axisX, barX, dot, gridX, line, type PlotOptions, ruleX, text } from "@observablehq/plot";
import type { ParetoRow } from "@/lib/patterns/paretoRows";
import styles from "./Plot.module.css";

/** A bar with its name, and the address of the cases behind it. */
export type ParetoBar = ParetoRow & Readonly<{ label: string; href: string }>;
/** A row's height leaves room for a finger. */
export const rowHeight = 46;
const letter = 15;
/** Two lanes side by side, in hundredths of the width: bars from 0 on, and the running share with a scale of its own. */
const longestBar = 56;
const lane = { from: 66, to: 100 } as const;
const inLane = (share: number) => lane.from + (lane.to - lane.from) * share;
const laneTicks = [0, 0.5, 1].map(inLane);

/** The Pareto chart: a bar a value, and beside the bars the running share of all as a line, in 100. */
export function paretoPlot(bars: readonly ParetoBar[], width: number): PlotOptions {
  const most = Math.max(...bars.map(({ count }) => count));
  const length = ({ count }: ParetoBar) => (longestBar * count) / most;
  const running = (bar: ParetoBar) => inLane(bar.running);
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
      gridX(laneTicks, { className: styles.grid ?? "", strokeOpacity: 1, ariaHidden: "true" }),
      axisX(laneTicks, {
        anchor: "top",
        tickFormat: (tick: number) => String(Math.round((100 * (tick - lane.from)) / (lane.to - lane.from))),
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
