import Link from "next/link";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { CheaperWay, WayTaken } from "@/lib/study/review/cheaperWay";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./CheaperPath.module.css";
import { MinutesTrack } from "./MinutesTrack";

type Props = Readonly<{ way: CheaperWay; vocabulary: Vocabulary }>;

/** What a cheaper path to the same cause would have been, its minutes drawn beside the recorded ones. */
export function CheaperPath({ way, vocabulary }: Props) {
  const { recorded, planned } = way;
  const of = Math.max(recorded.score.minutes, planned.score.minutes);
  return (
    <Section title="A cheaper path?" aside="minutes of the checks as the handbook reckons them">
      <p className={styles.said}>{sayWay(way)}</p>
      <dl className={styles.tracks}>
        <Track term="On record" way={recorded} of={of} />
        <Track term="The bench's way" way={planned} of={of} />
      </dl>
      {way.kind === "no cheaper" ? null : (
        <ol className={styles.checks}>
          {planned.checks.map(({ check, minutes }, at) => (
            <li key={check}>
              <span className={styles.number}>{at + 1}</span>
              <Link className={controls.link} href={`/handbook/checks/${check}`} prefetch={false}>
                {labelOf(vocabulary.checks, check)}
              </Link>
              <span className={styles.cost}>{formatMinutes(minutes)}</span>
              <span className={styles.cost}>root at {chanceIn100(planned.root[at + 1] ?? 0)}</span>
            </li>
          ))}
        </ol>
      )}
      <p className="small soft">
        The bench's way asks only for checks that were made on this job, knows every other case but not this
        one, and stops once one cause stands over 80 in 100.
      </p>
    </Section>
  );
}

function Track({ term, way, of }: Readonly<{ term: string; way: WayTaken; of: number }>) {
  const count = way.checks.length;
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        <MinutesTrack minutes={way.checks.map(({ minutes }) => minutes)} of={of} />
        <span>
          <b>{formatMinutes(way.score.minutes)}</b>, {count} {count === 1 ? "check" : "checks"}; the root
          cause ends at {chanceIn100(way.root.at(-1) ?? 0)} in 100
        </span>
      </dd>
    </div>
  );
}

function sayWay({ kind, savedMinutes }: CheaperWay): string {
  const saved = formatMinutes(Math.abs(savedMinutes));
  switch (kind) {
    case "cheaper":
      return `Asked in the bench's order, as much would have been known for ${saved} less, risk reckoned in.`;
    case "less sure":
      return `The bench would have stopped ${saved} earlier, risk reckoned in, but knowing less of the root cause: the record was worth its time.`;
    case "no cheaper":
      return "The bench finds none: the recorded path costs no more than its own.";
  }
}
