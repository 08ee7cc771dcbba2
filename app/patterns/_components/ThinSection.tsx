import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import { enoughCases, type ThinPlaces } from "@/lib/patterns/thinPlaces";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Columns.module.css";
import { EntryLinks } from "./EntryLinks";

type Props = Readonly<{
  places: ThinPlaces;
  /** Jobs without a neighbour. */
  lone: readonly Case[];
  vocabulary: Vocabulary;
}>;

const sayCases = (count: number) => (count === 0 ? "no case" : `${count} ${count === 1 ? "case" : "cases"}`);

/** Where the handbook tells of something that these jobs hardly bear out, and where a job has none like it. */
export function ThinSection({ places: { causes, checks, repairs }, lone, vocabulary }: Props) {
  const emptiestFirst = [...causes].sort((a, b) => a.cases - b.cases);
  return (
    <Section
      title="Where the casebook is thin"
      id="thin"
      aside="what is written up next about these is worth the most"
    >
      <div className={styles.columns}>
        <EntryLinks
          title={`Causes with fewer than ${enoughCases} cases`}
          none={`Every cause has ${enoughCases} cases or more.`}
          entries={emptiestFirst.map((cause) => ({
            href: `/handbook/causes/${cause.id}`,
            label: labelOf(vocabulary.causes, cause.id),
            aside: sayCases(cause.cases),
          }))}
        />
        <EntryLinks
          title="Checks that nobody made"
          none="Every check was made at least once."
          entries={checks.map((id) => ({
            href: `/handbook/checks/${id}`,
            label: labelOf(vocabulary.checks, id),
          }))}
        />
        <EntryLinks
          title="Repairs without a case"
          none="Every repair was done at least once."
          entries={repairs.map((id) => ({
            href: `/handbook/repairs/${id}`,
            label: labelOf(vocabulary.repairs, id),
          }))}
        />
        <EntryLinks
          title="Complaints without a like job"
          none="Every job has another that showed two of the same findings."
          entries={lone.map(({ id, instrument, complaint }) => ({
            href: `/casebook/${id}`,
            label: `${labelOf(vocabulary.instruments, instrument)}: ${complaint}`,
          }))}
        />
      </div>
    </Section>
  );
}
