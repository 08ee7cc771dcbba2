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
/** As far ahead as one plans. */
const daysNamed = 4;

/** The jobs to see again: those whose day has come, and when the next ones do. */
export function DueJobs({ now, later }: Props) {
  return (
    <Section title="To see again" aside={`${now.length} today`}>
      {now.length === 0 ? (
        <p className="soft">
          Nothing today. {later.length === 0 ? "What you work through comes back here." : ""}
        </p>
      ) : null}
      <Rows jobs={now.slice(0, seenAtOnce)} />
      <More count={now.length - seenAtOnce} of="job">
        <Rows jobs={now.slice(seenAtOnce)} />
      </More>
      {later.length > 0 ? <p className="small soft">Later: {sayDays(later)}.</p> : null}
    </Section>
  );
}

/** `3 on 28 November 2026, 1 on 4 December 2026, 2 after that` */
function sayDays(later: readonly DueView[]): string {
  const days = [...new Set(later.map(({ due }) => due))];
  const named = days.slice(0, daysNamed).map((day) => ({
    count: later.filter(({ due }) => due === day).length,
    day,
  }));
  const rest = later.length - named.reduce((sum, { count }) => sum + count, 0);
  return [
    ...named.map(({ count, day }) => `${count} on ${formatDay(day)}`),
    ...(rest > 0 ? [`${rest} after that`] : []),
  ].join(", ");
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
