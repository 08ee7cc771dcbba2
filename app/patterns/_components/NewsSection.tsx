import { CaseLine } from "@/app/_components/CaseLine";
import { formatDay } from "@/app/_components/formatDay";
import { labelOf } from "@/app/_components/labelOf";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import { harmfulRepairs } from "@/lib/casebook/harmfulRepairs";
import type { News } from "@/lib/patterns/newSince";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Columns.module.css";
import { EntryLinks } from "./EntryLinks";

type Props = Readonly<{
  news: News;
  vocabulary: Vocabulary;
  /** Year-month-day. */
  since: string;
}>;

const shownFirst = 4;
/** A list longer than this is for the casebook. */
const mostListed = 60;

/** What the last month brought: jobs finished, and causes, repairs and harm that are new to the casebook. */
export function NewsSection({ news, vocabulary, since }: Props) {
  const line = (kase: Case) => (
    <CaseLine
      key={kase.id}
      id={kase.id}
      title={kase.title}
      meta={[
        labelOf(vocabulary.instruments, kase.instrument),
        formatDay(kase.closed ?? kase.received),
        harmfulRepairs(kase).length > 0 ? "a repair did harm" : "",
      ]
        .filter(Boolean)
        .join(" · ")}
      lesson={kase.lessons[0]}
    />
  );
  return (
    <Section
      title={`New since ${formatDay(since)}`}
      id="new"
      aside={`${news.cases.length} ${news.cases.length === 1 ? "job" : "jobs"} finished, ${news.harms.length} with harm`}
    >
      {news.cases.length === 0 ? (
        <p className="small soft">No job was finished since.</p>
      ) : (
        <div className={styles.columns}>
          <div>
            {news.cases.slice(0, shownFirst).map(line)}
            <More count={news.cases.length - shownFirst} of="job">
              {news.cases.slice(shownFirst, mostListed).map(line)}
            </More>
          </div>
          <EntryLinks
            title="Root causes met for the first time"
            none="No cause that was not met before."
            entries={news.causes.map((id) => ({
              href: `/handbook/causes/${id}`,
              label: labelOf(vocabulary.causes, id),
            }))}
          />
          <EntryLinks
            title="Repairs done for the first time"
            none="No repair that was not done before."
            entries={news.repairs.map((id) => ({
              href: `/handbook/repairs/${id}`,
              label: labelOf(vocabulary.repairs, id),
            }))}
          />
        </div>
      )}
    </Section>
  );
}
