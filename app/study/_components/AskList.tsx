import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { RiskMark } from "@/app/_components/RiskMark";
import { riskWord } from "@/app/_components/riskWord";
import { Section } from "@/app/_components/Section";
import type { StudyCheck } from "@/lib/study/openForStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./AskList.module.css";
import { askHref, type StudyQuery } from "./studyQuery";

type Props = Readonly<{ open: readonly StudyCheck[]; query: StudyQuery; vocabulary: Vocabulary }>;

const riskClasses = [0, 1, 2, 3, 4];

/** The checks that can be asked for, the safest first; what is not open yet says what has to come before it. */
export function AskList({ open, query, vocabulary }: Props) {
  const groups = riskClasses
    .map((risk) => ({ risk, checks: open.filter(({ check }) => check.risk === risk) }))
    .filter(({ checks }) => checks.length > 0);
  return (
    <Section
      title="Ask for a check"
      id="ask"
      className="unprinted"
      aside="it answers at once, and the minutes are spent"
    >
      <nav className={styles.jump} aria-label="Kinds of check">
        {groups.map(({ risk, checks }) => (
          <a key={risk} href={`#ask-${risk}`}>
            {riskWord(risk)} <span className="soft">{checks.length}</span>
          </a>
        ))}
        <a href="#answer">Your answer</a>
      </nav>
      {groups.length === 0 ? (
        <p className="soft">There is nothing left to ask for. Say what you think it is.</p>
      ) : null}
      {groups.map(({ risk, checks }) => (
        <div key={risk} className={styles.group} id={`ask-${risk}`}>
          <h3>
            <RiskMark riskClass={risk} />
          </h3>
          <ul>
            {checks.map(({ check, first }) => (
              <li key={check.id}>
                {first.length === 0 ? (
                  <a className={styles.check} href={askHref(query, check.id)}>
                    <CheckWords label={check.label} question={check.question} minutes={check.minutes} />
                  </a>
                ) : (
                  <div className={styles.check} data-shut="">
                    <CheckWords label={check.label} question={check.question} minutes={check.minutes} />
                    <p className={styles.first}>
                      First: {first.map((id) => labelOf(vocabulary.checks, id)).join(", ")}
                    </p>
                  </div>
                )}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </Section>
  );
}

function CheckWords({
  label,
  question,
  minutes,
}: Readonly<{ label: string; question: string; minutes: number }>) {
  return (
    <>
      <span className={styles.minutes}>{minutes < 1 ? "<1 min" : formatMinutes(minutes)}</span>
      <span className={styles.words}>
        <b>{label}</b>
        <small>{question}</small>
      </span>
    </>
  );
}
