import Link from "next/link";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import { formatDay } from "@/app/_components/formatDay";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import { wentWords } from "@/app/study/_components/wentWords";
import type { Case } from "@/lib/casebook/caseFile";
import type { Learner, LearnerSession } from "@/lib/casebook/learners/learnerFile";
import { howItWent } from "@/lib/study/memory/howItWent";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./LearnerTables.module.css";

type Props = Readonly<{ learner: Learner; cases: ReadonlyMap<string, Case>; vocabulary: Vocabulary }>;

const seenAtOnce = 20;

/** Session by session, the last one first. */
export function SessionsTable({ learner, cases, vocabulary }: Props) {
  const sessions = [...learner.sessions].reverse();
  const table = (some: readonly LearnerSession[]) => (
    <Rows sessions={some} cases={cases} vocabulary={vocabulary} />
  );
  return (
    <Section title="Session by session" aside={`${sessions.length} in all`}>
      {table(sessions.slice(0, seenAtOnce))}
      <More count={sessions.length - seenAtOnce} of="session">
        {table(sessions.slice(seenAtOnce))}
      </More>
    </Section>
  );
}

function Rows({
  sessions,
  cases,
  vocabulary,
}: Readonly<{ sessions: readonly LearnerSession[] } & Omit<Props, "learner">>) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Job</th>
          <th scope="col">Day</th>
          <th scope="col">How it went</th>
          <th scope="col">Said</th>
          <th scope="col">Minutes</th>
          <th scope="col">On record</th>
        </tr>
      </thead>
      <tbody>
        {sessions.map((session) => {
          const kase = cases.get(session.case);
          return (
            <tr key={`${session.day} ${session.case}`}>
              <th scope="row">
                {kase ? (
                  <Link href={`/casebook/${kase.id}`} prefetch={false}>
                    {kase.title}
                  </Link>
                ) : (
                  `${session.case}, no longer in the casebook`
                )}
              </th>
              <td>{formatDay(session.day)}</td>
              <td>{wentWords[howItWent(session)]}</td>
              <td>
                {session.said
                  .map(({ cause, sure }) => `${labelOf(vocabulary.causes, cause)} ${chanceIn100(sure)}`)
                  .join(", ")}
              </td>
              <td data-term="Minutes">{formatMinutes(session.minutes)}</td>
              <td data-term="On record">{formatMinutes(session.recordMinutes)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
