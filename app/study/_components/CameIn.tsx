import job from "@/app/_components/JobPage.module.css";
import styles from "./CameIn.module.css";

type Props = Readonly<{ as: "h1" | "h3"; instrument: string; complaint: string; arrival: readonly string[] }>;

/** The job as it came over the counter: instrument, complaint, state on arrival, and nothing more. */
export function CameIn({ as: Heading, instrument, complaint, arrival }: Props) {
  return (
    <div className={`${job.came} ${styles.came}`}>
      <Heading>{instrument}</Heading>
      <p className={styles.complaint}>{complaint}</p>
      <p>
        <b>On arrival</b> {arrival.length > 0 ? arrival.join("; ") : "nothing was noted"}
      </p>
    </div>
  );
}
