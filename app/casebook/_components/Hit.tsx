import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { Jaws } from "@/app/_components/Jaws";
import { LessonMark } from "@/app/_components/LessonMark";
import { labelOf } from "@/app/_components/labelOf";
import { outcomeWord } from "@/app/_components/outcomeWord";
import type { FoundCase } from "@/lib/text/searchCases";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Hit.module.css";
import { Runs } from "./Runs";

type Props = Readonly<{
  hit: FoundCase;
  vocabulary: Vocabulary;
  /** The length of every bar's track down the page, minutes. */
  scaleMinutes: number;
}>;

/** One case found: where the words stand in it, what it was, what it taught, and what it took against what was quoted. */
export function Hit({ hit, vocabulary, scaleMinutes }: Props) {
  const { case: kase, title, excerpt } = hit;
  const roots = kase.causes.filter(({ role }) => role === "root");
  return (
    <article className={styles.hit}>
      <div>
        <h3>
          <Link className={controls.title} href={`/casebook/${kase.id}`} prefetch={false}>
            <Runs runs={title} />
          </Link>
        </h3>
        <p className={styles.meta}>
          <span>{kase.id}</span>
          <span>
            {[labelOf(vocabulary.instruments, kase.instrument), kase.maker, kase.model]
              .filter(Boolean)
              .join(", ")}
          </span>
          {roots.length > 0 ? (
            <span>
              root:{" "}
              {roots
                .map(({ cause }) => labelOf(vocabulary.causes, cause))
                .join("; ")
                .toLowerCase()}
            </span>
          ) : null}
          {kase.status === "open" ? <span>still on the bench</span> : null}
          {kase.outcome && kase.outcome !== "fixed" ? (
            <span>{outcomeWord(kase.outcome).toLowerCase()}</span>
          ) : null}
          {kase.harms.length > 0 ? <span className={styles.harm}>repair did harm</span> : null}
        </p>
        <p>
          <Runs runs={excerpt} />
        </p>
        {kase.lessons[0] ? <LessonMark small>{kase.lessons[0]}</LessonMark> : null}
      </div>
      {kase.minutes === undefined ? null : (
        <div className={styles.took}>
          <p>
            <span className="reading">{formatMinutes(kase.minutes)}</span>
          </p>
          <Jaws value={kase.minutes} of={scaleMinutes} promised={kase.quoted?.minutes} />
          <p>{kase.quoted ? `quoted ${formatMinutes(kase.quoted.minutes)}` : "no quote"}</p>
        </div>
      )}
    </article>
  );
}
