import { quoteWord } from "@/app/_components/quoteWord";
import type { QuoteStanding } from "@/lib/casebook/quoteStanding";
import plot from "./Plot.module.css";
import styles from "./QuoteLegend.module.css";

/** From left to right as the pieces of a bar lie. */
const pieces: readonly Readonly<{ standing: QuoteStanding; className: string | undefined }>[] = [
  { standing: "under", className: plot.under },
  { standing: "held", className: plot.held },
  { standing: "over", className: plot.over },
  { standing: "far-over", className: plot.farOver },
];

/** What the pieces of a bar mean, in the order in which they lie. */
export function QuoteLegend() {
  return (
    <span className={styles.legend}>
      {pieces.map(({ standing, className }) => (
        <span key={standing}>
          <svg width="22" height="16" aria-hidden="true">
            <rect className={className} x="1" y="1" width="20" height="14" />
          </svg>
          {quoteWord(standing)}
        </span>
      ))}
    </span>
  );
}
