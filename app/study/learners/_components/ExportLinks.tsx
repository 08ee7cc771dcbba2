import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";

/** Everything that is kept, to take along: of one learner, or of all. */
export function ExportLinks({ learner }: Readonly<{ learner: string | null }>) {
  const of = learner === null ? "" : `&learner=${learner}`;
  return (
    <Section title="Take it along" aside="every session a row" className="unprinted">
      <p className={controls.row}>
        <a className={controls.plain} href={`/study/learners/export?as=csv${of}`} download>
          As a table (CSV)
        </a>
        <a className={controls.plain} href={`/study/learners/export?as=json${of}`} download>
          As JSON
        </a>
      </p>
    </Section>
  );
}
