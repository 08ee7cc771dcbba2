import { formatDay } from "@/app/_components/formatDay";
import type { StudiedJob } from "@/lib/study/memory/jobsOf";
import styles from "./DueJobs.module.css";
import { wentWords } from "./wentWords";

/** What the learner's file has of this job: how it went last, and when it comes back. */
export function Kept({ name, job }: Readonly<{ name: string; job: StudiedJob }>) {
  const times = job.sessions.length;
  return (
    <p className={styles.stood}>
      Kept for {name}: <span data-went={job.went}>{wentWords[job.went]}</span>
      {times > 1 ? `, the ${times}${ordinal(times)} time` : ""}. It comes back on {formatDay(job.due)}.
    </p>
  );
}

const ordinal = (count: number) =>
  count % 100 > 10 && count % 100 < 14 ? "th" : (["th", "st", "nd", "rd"][count % 10] ?? "th");
