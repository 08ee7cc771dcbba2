import { formatDay } from "@/app/_components/formatDay";
import type { StudiedJob } from "@/lib/study/memory/jobsOf";
import styles from "./DueJobs.module.css";
import { wentWords } from "./wentWords";

type Props = Readonly<{
  name: string;
  job: StudiedJob;
  /** Whether the answer on the page is the one that stands in the file. */
  isThis: boolean;
}>;

/** What the learner's file has of this job: how it went, and when it comes back. */
export function Kept({ name, job, isThis }: Props) {
  const times = job.sessions.length;
  const comesBack = `It comes back on ${formatDay(job.due)}.`;
  const went = <span data-went={job.went}>{wentWords[job.went]}</span>;
  return isThis ? (
    <p className={styles.stood}>
      Kept for {name}: {went}
      {times > 1 ? `, the ${times}${ordinal(times)} time` : ""}. {comesBack}
    </p>
  ) : (
    <p className={styles.stood}>
      This answer is not kept: a job counts once a day, by the first. In the file of {name} stands: {went}, on{" "}
      {formatDay(job.last)}. {comesBack}
    </p>
  );
}

const ordinal = (count: number) =>
  count % 100 > 10 && count % 100 < 14 ? "th" : (["th", "st", "nd", "rd"][count % 10] ?? "th");
