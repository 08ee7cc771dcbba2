import { stepViews } from "@/app/_components/stepViews";
import type { Case } from "@/lib/casebook/caseFile";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Print.module.css";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary; lengths: LengthWords }>;

/** The steps of a job in their order, with their minutes and what they come to. */
export function PathTable({ kase, vocabulary, lengths }: Props) {
  const steps = stepViews(kase, vocabulary, lengths);
  return (
    <>
      <h2>Path</h2>
      <table className={styles.path}>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">What</th>
            <th scope="col">Found</th>
            <th scope="col">Min</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ title, found, note, minutes }, at) => (
            <tr key={`${at} ${title}`}>
              <td>{at + 1}</td>
              <td>{title}</td>
              <td>
                {found}
                {note ? `; ${note}` : ""}
              </td>
              <td>{minutes}</td>
            </tr>
          ))}
          <tr>
            <td />
            <td>
              <b>All</b>
            </td>
            <td />
            <td>
              <b>{kase.minutes ?? steps.reduce((sum, { minutes }) => sum + minutes, 0)}</b>
            </td>
          </tr>
        </tbody>
      </table>
    </>
  );
}
