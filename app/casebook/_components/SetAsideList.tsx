import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import { type ContentProblem, formatProblem } from "@/lib/document/contentProblem";
import styles from "./SetAsideList.module.css";

/** As many as one mends in a sitting; the rest opens. */
const shownFirst = 12;

/** Content that could not be read, each line with what to write instead. */
export function SetAsideList({ problems }: Readonly<{ problems: readonly ContentProblem[] }>) {
  if (problems.length === 0) return null;
  return (
    <Section
      title="Set aside"
      id="set-aside"
      aside={`${problems.length} ${problems.length === 1 ? "fault" : "faults"} in the content's files`}
    >
      <p className={styles.lead}>
        What cannot be read is left out of searches and answers; the files themselves stay as they are. Mend
        the lines named here and save: they are read again by themselves.
      </p>
      <Faults problems={problems.slice(0, shownFirst)} />
      <More count={problems.length - shownFirst} of="fault">
        <Faults problems={problems.slice(shownFirst)} />
      </More>
    </Section>
  );
}

function Faults({ problems }: Readonly<{ problems: readonly ContentProblem[] }>) {
  return (
    <ul className={styles.list}>
      {problems.map((problem) => {
        const line = formatProblem(problem);
        return <li key={line}>{line}</li>;
      })}
    </ul>
  );
}
