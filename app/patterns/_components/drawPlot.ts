import "server-only";
import { type PlotOptions, plot } from "@observablehq/plot";
import { parseHTML } from "linkedom";
import type { ReactNode } from "react";
import styles from "./Plot.module.css";
import { svgToReact } from "./svgToReact";

/** Draws a plot on the server: plain SVG with links, no script, no inline style. */
export function drawPlot(options: PlotOptions): ReactNode {
  const { document } = parseHTML("<html></html>");
  return svgToReact(plot({ ...options, document }), { className: styles.plot ?? "" });
}
