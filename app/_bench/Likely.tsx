import type { Answer } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";
import { More } from "../_components/More";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import { type CaseTitles, CauseRow } from "./CauseRow";
import styles from "./Likely.module.css";
import { Remarks } from "./Remarks";

type Props = Readonly<{ answer: Answer; titles: CaseTitles; caseCount: number }>;

/** From this chance on that none fits, the tool says so before it names anything. */
const clearlyNone = 0.5;
/** As many as stay in sight beside the evidence. */
const shownFirst = 5;

/** What it is likely to be, each cause with its chance, its reasons and its cases; and the chance that it is none of them. */
export function Likely({ answer, titles, caseCount }: Props) {
  const { causes, noneFits, remarks } = answer;
  const rows = causes.map((cause, place) => (
    <CauseRow key={cause.id} cause={cause} titles={titles} isFirst={place === 0} />
  ));
  return (
    <Section title="Likely" id="likely" aside={`chances in 100, from ${caseCount} cases`}>
      {noneFits >= clearlyNone ? (
        <StateNote title="None of the known causes fits this well" tone="warn">
          <p>Look again at how the words were read, make one more check, or treat it as something new.</p>
        </StateNote>
      ) : null}
      <Remarks remarks={remarks} />
      <div className={styles.causes}>
        {rows.slice(0, shownFirst)}
        <p className={styles.none}>
          <span>None of these fits</span>
          <span className="reading">{chanceIn100(noneFits)}</span>
        </p>
        <More count={rows.length - shownFirst} of="unlikelier cause">
          {rows.slice(shownFirst)}
        </More>
      </div>
    </Section>
  );
}
