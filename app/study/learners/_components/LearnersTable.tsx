import Link from "next/link";
import { formatDay } from "@/app/_components/formatDay";
import type { Standing } from "@/lib/study/memory/standingOf";
import styles from "./LearnerTables.module.css";
import { WentBar } from "./WentBar";

/** Learners, one a row. */
export function LearnersTable({ learners }: Readonly<{ learners: readonly Standing[] }>) {
  if (learners.length === 0) return <p className="soft">No learner has that name.</p>;
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Learner</th>
          <th scope="col">Jobs</th>
          <th scope="col">How they went last</th>
          <th scope="col">To see again</th>
          <th scope="col">Last here</th>
        </tr>
      </thead>
      <tbody>
        {learners.map(({ id, name, demo, jobs, missed, nearly, got, due, last }) => (
          <tr key={id}>
            <th scope="row">
              <Link href={`/study/learners/${id}`} prefetch={false}>
                {name}
              </Link>
              {demo ? <span className="small soft"> demo, invented</span> : null}
            </th>
            <td data-term="Jobs">{jobs}</td>
            <td>
              <WentBar missed={missed} nearly={nearly} got={got} />
            </td>
            <td data-term="To see again">{due === 0 ? "none" : due}</td>
            <td data-term="Last here">{last ? formatDay(last) : "not yet"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
