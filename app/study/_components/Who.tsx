import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { leaveStudy } from "../actions";
import styles from "./Who.module.css";
import { WhoForm } from "./WhoForm";

type Props = Readonly<{ learner: Readonly<{ id: string; name: string }> | undefined; jobs: number }>;

/** Who is studying, or a line to say so; without a name one studies all the same, and nothing is kept. */
export function Who({ learner, jobs }: Props) {
  if (!learner)
    return (
      <Section title="Who is studying?" aside="no password: the name is enough">
        <WhoForm />
        <p className="small soft">
          Then your answers are kept in a file of your own, and what you missed comes back. Without a name
          nothing is kept. <Link href="/study/learners">All learners</Link>
        </p>
      </Section>
    );
  return (
    <div className={styles.who}>
      <b>{learner.name}</b>
      <span className="soft">
        {jobs === 0 ? "no job worked through yet" : `${jobs} ${jobs === 1 ? "job" : "jobs"} worked through`}
      </span>
      <Link className={controls.plain} href={`/study/learners/${learner.id}`} prefetch={false}>
        How you stand
      </Link>
      <Link className={controls.plain} href="/study/learners" prefetch={false}>
        All learners
      </Link>
      <form action={leaveStudy}>
        <button type="submit" className={controls.word}>
          Somebody else
        </button>
      </form>
    </div>
  );
}
