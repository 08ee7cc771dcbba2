import Link from "next/link";
import type { UnderstoodFinding } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import { Piece } from "../_components/Piece";
import { partWords } from "../_components/partWords";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import { leaveOut, setFinding, takeBack } from "./editBench";
import styles from "./Findings.module.css";

type Props = Readonly<{ bench: BenchQuery; finding: UnderstoodFinding; vocabulary: Vocabulary }>;

/** One finding as it was taken; a tap opens what it could have been instead, in place. */
export function FindingPiece({ bench, finding, vocabulary }: Props) {
  const { check, outcome, part, source } = finding;
  const about = [partWords(vocabulary, part), finding.checkLabel.toLowerCase()].filter(Boolean).join(" · ");
  const label = finding.doubtful ? `${finding.outcomeLabel}, perhaps` : finding.outcomeLabel;
  return (
    <details className={styles.finding} name="finding">
      <summary>
        <Piece hold={finding.absent ? "not" : "held"} about={about}>
          {label}
        </Piece>
      </summary>
      <div className={styles.panel}>
        <p>
          {source === "says" ? <>From your words “{finding.from}”. </> : null}
          {source === "evidence" ? "Tapped by you. " : null}
          {source === "swaps" || source === "gauges" || source === "diameters"
            ? `From ${finding.from}. `
            : null}
          <Link href={`/handbook/checks/${check}`} prefetch={false}>
            About this check
          </Link>
        </p>
        {source === "says" || source === "evidence" ? (
          <>
            <p className={controls.row}>
              {vocabulary.checks.get(check)?.outcomes.map((other) => (
                <BenchLink
                  key={other.id}
                  to={setFinding(bench, { check, outcome: other.id, part })}
                  className={controls.plain}
                  current={other.id === outcome}
                >
                  {other.label}
                </BenchLink>
              ))}
            </p>
            <p className={controls.row}>
              {source === "evidence" ? (
                <BenchLink to={takeBack(bench, finding)} className={controls.word}>
                  Take it back
                </BenchLink>
              ) : (
                <BenchLink to={leaveOut(bench, finding)} className={controls.word}>
                  Leave it out
                </BenchLink>
              )}
            </p>
          </>
        ) : null}
      </div>
    </details>
  );
}
