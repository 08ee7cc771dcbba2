import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import styles from "./Choose.module.css";
import { studyHref } from "./studyQuery";

type Props = Readonly<{
  families: readonly Readonly<{ id: string; label: string; cases: number }>[];
  /** Cases of all families together. */
  total: number;
  seed: number;
}>;

/** The way in: which family the next job is to come from. */
export function Choose({ families, total, seed }: Props) {
  const href = (family: string | null) =>
    studyHref({ family, seed, turn: 0, case: null, asked: [], lesson: null });
  return (
    <>
      <h1>Study</h1>
      <p className={styles.lead}>
        A past job comes in as it came in. Ask for one check at a time; each answers at once and its minutes
        are spent. Say what you think it is whenever you are ready. Then see how it went.
      </p>
      {total === 0 ? (
        <StateNote title="No job to work through yet" level={2}>
          <p>
            A closed case with a root cause and at least three checks before the cure can be studied. The
            casebook has none so far.
          </p>
        </StateNote>
      ) : (
        <>
          <p className={styles.any}>
            <a className={controls.lead} href={href(null)}>
              Choose for me
            </a>
            <span className="soft">one of {total} jobs, any family</span>
          </p>
          <Section title="Or pick a family" aside="how many jobs there are to work through">
            <ul className={styles.families}>
              {families.map(({ id, label, cases }) => (
                <li key={id}>
                  <a href={href(id)}>
                    <b>{label}</b>
                    <span>
                      {cases} {cases === 1 ? "job" : "jobs"}
                    </span>
                  </a>
                </li>
              ))}
            </ul>
          </Section>
        </>
      )}
    </>
  );
}
