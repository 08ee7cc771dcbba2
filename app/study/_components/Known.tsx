import { chanceIn100 } from "@/app/_components/chanceIn100";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { Piece } from "@/app/_components/Piece";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import type { AnswerView } from "./answerViews";
import styles from "./Known.module.css";

/** What was asked for and what came back, one check after another; the newest is where a link may point. */
export function Known({
  answers,
  title = "What you know",
}: Readonly<{ answers: readonly AnswerView[]; title?: string }>) {
  return (
    <Section title={title} aside={sayAsked(answers)}>
      {answers.length === 0 ? (
        <p className="soft">Only what came over the counter. Ask for a check below.</p>
      ) : null}
      <ol className={styles.known}>
        {answers.map((answer, at) => {
          const isLast = at === answers.length - 1;
          return (
            <li key={answer.id} id={isLast ? "last" : undefined} tabIndex={isLast ? -1 : undefined}>
              <span className={styles.number}>{at + 1}</span>
              <div>
                <h3>{answer.label}</h3>
                <Answer answer={answer} />
              </div>
              <span className={styles.cost}>
                <span>{formatMinutes(answer.minutes)}</span>
                <RiskMark riskClass={answer.riskClass} />
              </span>
            </li>
          );
        })}
      </ol>
    </Section>
  );
}

function Answer({ answer: { label, found, comesTo, typical } }: Readonly<{ answer: AnswerView }>) {
  if (found.length === 0) {
    return (
      <>
        <p>Not done on this job: your minutes are spent, and nothing was found.</p>
        <p className="small soft">
          {typical ? (
            <>
              <b>Typical, not found:</b> {typical.words}, in about {chanceIn100(typical.probability)} of 100
              jobs with such a cause. It counts as no evidence.
            </>
          ) : (
            "Nothing is typical here with such a cause."
          )}
        </p>
      </>
    );
  }
  return (
    <>
      <p className={styles.pieces}>
        {found.map(({ about, words }, at) => (
          <Piece key={`${at} ${about}`} about={aboutBeside(about, label)}>
            {words}
          </Piece>
        ))}
      </p>
      {comesTo.length > 0 ? (
        <p>
          Which comes to: <b>{comesTo.join("; ")}</b>
        </p>
      ) : null}
    </>
  );
}

/** The check's own name stands over the pieces already: only the part is said again. */
function aboutBeside(about: string, label: string): string | undefined {
  if (about === label) return undefined;
  return about.startsWith(`${label}, `) ? about.slice(label.length + 2) : about;
}

function sayAsked(answers: readonly AnswerView[]): string {
  if (answers.length === 0) return "asked for, one at a time";
  const minutes = answers.reduce((sum, answer) => sum + answer.minutes, 0);
  return `${answers.length} ${answers.length === 1 ? "check" : "checks"}, ${formatMinutes(minutes)}`;
}
