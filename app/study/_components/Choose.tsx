import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import styles from "./Choose.module.css";
import { sittingHref } from "./studyQuery";

type Props = Readonly<{
  families: readonly Readonly<{ id: string; label: string; cases: number }>[];
  /** Cases of all families together. */
  total: number;
  seed: number;
  /** Where the job is that has waited longest to be seen again. */
  again: string | null;
}>;

/** The way in: what comes back first, or which family the next job is to come from. */
export function Choose({ families, total, seed, again }: Props) {
  if (total === 0)
    return (
      <StateNote title="No job to work through yet" level={2}>
        <p>
          A closed case with a root cause and at least three checks before the cure can be studied. The
          casebook has none so far.
        </p>
      </StateNote>
    );
  return (
    <Section title="Take the next job" aside={`${total} jobs in all`}>
      <p className={styles.any}>
        {again ? (
          <a className={controls.lead} href={again}>
            See the first of them again
          </a>
        ) : null}
        <a className={again ? controls.plain : controls.lead} href={sittingHref(null, seed)}>
          Choose for me
        </a>
        <span className="soft">or pick a family</span>
      </p>
      <ul className={styles.families}>
        {families.map(({ id, label, cases }) => (
          <li key={id}>
            <a href={sittingHref(id, seed)}>
              <b>{label}</b>
              <span>
                {cases} {cases === 1 ? "job" : "jobs"}
              </span>
            </a>
          </li>
        ))}
      </ul>
    </Section>
  );
}
