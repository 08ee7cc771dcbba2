import Link from "next/link";
import type { Warning } from "@/lib/consult/answer";
import { upperFirst } from "@/lib/text/upperFirst";
import controls from "../_components/controls.module.css";
import { RiskMark } from "../_components/RiskMark";
import styles from "./NotYet.module.css";
import { Odds } from "./Odds";
import { OddsTally } from "./OddsTally";

type Props = Readonly<{ warning: Warning }>;

/** One repair to hold off: its risk, how often it went wrong in like jobs and how, what to look at first, and what can hurt the one who does it. */
export function WarningRow({ warning }: Props) {
  const { repair, label, riskClass, checkFirst, cautions } = warning;
  return (
    <article className={styles.warning}>
      <h3>
        <Link className={controls.title} href={`/handbook/repairs/${repair}`} prefetch={false}>
          {label}
        </Link>
      </h3>
      <p className={styles.odds}>
        <RiskMark riskClass={riskClass} />
        <OddsTally warning={warning} />
      </p>
      <Odds warning={warning} />
      <GoesWrong warning={warning} />
      {checkFirst.length > 0 ? (
        <details className={styles.looks}>
          <summary>
            <span>
              <b>First:</b> {checkFirst.map((look) => look.label.toLowerCase()).join("; ")}. <u>Why</u>
            </span>
          </summary>
          <ul>
            {checkFirst.map((look) => (
              <li key={look.check}>
                <Link className={controls.link} href={`/handbook/checks/${look.check}`} prefetch={false}>
                  {look.label}
                </Link>
                <span>{look.why}</span>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
      {cautions.length > 0 ? (
        <p className={styles.cautions}>
          <b>Mind yourself:</b>
          {cautions.map(({ id, label: hazard }) => (
            <Link key={id} className={controls.link} href={`/handbook/cautions/${id}`} prefetch={false}>
              {hazard.toLowerCase()}
            </Link>
          ))}
        </p>
      ) : null}
    </article>
  );
}

/** What it did when it did harm, case by case; where it did none yet, how the handbook says it goes wrong. */
function GoesWrong({ warning: { harms, goesWrong } }: Props) {
  if (harms.length === 0)
    return (
      <p className={styles.why}>
        <b>How it goes wrong, by the handbook:</b> {goesWrong.join(" ")}
      </p>
    );
  return (
    <ul className={styles.harms} aria-label="What it did">
      {harms.map(({ case: id, what }) => (
        <li key={`${id} ${what}`}>
          {upperFirst(what)}{" "}
          <Link href={`/casebook/${id}`} prefetch={false}>
            case {id}
          </Link>
        </li>
      ))}
    </ul>
  );
}
