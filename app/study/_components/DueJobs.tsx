import { formatDay } from "@/app/_components/formatDay";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import styles from "./DueJobs.module.css";
import type { DueView } from "./dueViews";
import { wentWords } from "./wentWords";

type Props = Readonly<{
  now: readonly DueView[];
  later: readonly DueView[];
}>;

/** As many as one sits down to. */
const seenAtOnce = 8;

/** The jobs to see again: those whose day has come, and when the next ones do. */
export function DueJobs({ now, later }: Props) {
  const [next] = later;
  return (
    <Section title="To see again" aside={`${now.length} today`}>
      {now.length === 0 ? (
        <p className="soft">
          Nothing today.{" "}
          {next ? `The next comes back on ${formatDay(next.due)}.` : "What you work through comes back here."}
        </p>
      ) : null}
      <Rows jobs={now.slice(0, seenAtOnce)} />
      <More count={now.length - seenAtOnce} of="job">
        <Rows jobs={now.slice(seenAtOnce)} />
      </More>
      {later.length > 0 ? (
        <p className="small soft">
          {later.length}
          {now.length > 0 ? " more" : ""} {later.length === 1 ? "comes" : "come"} back later
          {now.length > 0 && next ? `, the next on ${formatDay(next.due)}` : ""}.
        </p>
      ) : null}
    </Section>
  );
}

const Rows = ({ jobs }: Readonly<{ jobs: readonly DueView[] }>) => (
  <ul className={styles.jobs}>
    {jobs.map(({ id, href, instrument, complaint, went, last, due }) => (
      <li key={id}>
        <a href={href}>
          <b>{instrument}</b>
          <span className={styles.complaint}>{complaint}</span>
        </a>
        <p className={styles.stood}>
          <span data-went={went}>{wentWords[went]}</span> on {formatDay(last)}; back since {formatDay(due)}
        </p>
      </li>
    ))}
  </ul>
);
