import type { Warning } from "@/lib/consult/answer";
import { More } from "../_components/More";
import { Section } from "../_components/Section";
import styles from "./NotYet.module.css";
import { WarningRow } from "./WarningRow";

/** As many as stay in sight beside the evidence. */
const shownFirst = 2;

/** What not to do yet, how often it went wrong, and what to look at first. */
export function NotYet({ warnings }: Readonly<{ warnings: readonly Warning[] }>) {
  const rows = warnings.map((warning) => <WarningRow key={warning.repair} warning={warning} />);
  const hasCautions = warnings.some(({ cautions }) => cautions.length > 0);
  return (
    <Section title="Not yet" id="not-yet" aside="before any force">
      {rows.length === 0 ? <p className="small soft">Nothing in view here that has done harm.</p> : null}
      {rows.slice(0, shownFirst)}
      <More count={rows.length - shownFirst} of="warning">
        {rows.slice(shownFirst)}
      </More>
      {hasCautions ? (
        <p className={styles.defers}>
          The product's own safety data sheet, local codes and licensed practice come before anything said
          here.
        </p>
      ) : null}
    </Section>
  );
}
