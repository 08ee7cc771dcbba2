import type { PlotOptions } from "@observablehq/plot";
import type { ReactNode } from "react";
import controls from "@/app/_components/controls.module.css";
import { drawPlot } from "./drawPlot";
import styles from "./Plot.module.css";

type Props = Readonly<{
  /** What is drawn and how to read it. */
  caption: ReactNode;
  /** The plot at a width in pixels. */
  draw: (width: number) => PlotOptions;
  /** The same in figures. */
  children: ReactNode;
  /** What opens the table. */
  tableTitle: string;
}>;

/** A plot is drawn for a phone, a tablet and a desk, so that its words keep their size; the page's width shows one of them. */
const widths = [
  { name: styles.narrow, width: 352 },
  { name: styles.middle, width: 740 },
  { name: styles.wide, width: 1080 },
];

/** A plot with its caption above and its figures in a table that opens below. */
export function PlotFigure({ caption, draw, children, tableTitle }: Props) {
  return (
    <figure className={styles.figure}>
      <figcaption>{caption}</figcaption>
      {widths.map(({ name, width }) => (
        <div key={width} className={name}>
          {drawPlot(draw(width))}
        </div>
      ))}
      <details className={styles.fold}>
        <summary className={controls.opens}>{tableTitle}</summary>
        {children}
      </details>
    </figure>
  );
}
