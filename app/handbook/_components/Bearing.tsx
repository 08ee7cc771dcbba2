import { CaseLine } from "@/app/_components/CaseLine";
import { formatDay } from "@/app/_components/formatDay";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Bearing.module.css";

type Props = Readonly<{
  title: string;
  cases: readonly Case[];
  vocabulary: Vocabulary;
  /** What to say of each case beside instrument and day. */
  say?: (kase: Case) => string;
  none: string;
}>;

const shownFirst = 6;

/** The cases that bear on an entry, each with its lesson. */
export function Bearing({ title, cases, vocabulary, say, none }: Props) {
  const lines = (some: readonly Case[]) =>
    some.map((kase) => (
      <CaseLine
        key={kase.id}
        id={kase.id}
        title={kase.title}
        meta={[labelOf(vocabulary.instruments, kase.instrument), formatDay(kase.received), say?.(kase)]
          .filter(Boolean)
          .join(" · ")}
        lesson={kase.lessons[0]}
      />
    ));
  const rest = cases.slice(shownFirst);
  return (
    <Section title={title} aside={cases.length > 0 ? `${cases.length}` : undefined}>
      {cases.length === 0 ? <p className="small soft">{none}</p> : null}
      {lines(cases.slice(0, shownFirst))}
      {rest.length > 0 ? (
        <details className={styles.more}>
          <summary>{rest.length} more</summary>
          {lines(rest)}
        </details>
      ) : null}
    </Section>
  );
}
