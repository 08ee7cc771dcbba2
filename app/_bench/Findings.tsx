import type { Answer, UnderstoodFinding } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { Piece } from "../_components/Piece";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import { putBack } from "./editBench";
import { FindingPiece } from "./FindingPiece";
import styles from "./Findings.module.css";
import { leftOutWords } from "./leftOutWords";
import { SwapPiece } from "./SwapPiece";

type Props = Readonly<{ bench: BenchQuery; answer: Answer; vocabulary: Vocabulary }>;

/** The same finding stays the same piece when it is corrected, so that the finger and the focus stay on it. */
const keyOf = ({ check, part, source, from }: UnderstoodFinding) =>
  source === "says" || source === "evidence" ? `${check} ${part}` : `${check} ${part} ${from}`;

/** How the bench was read, piece by piece: nothing is taken in silence, and every piece can be put right with a tap. */
export function Findings({ bench, answer, vocabulary }: Props) {
  const held = answer.understood.filter(({ absent }) => !absent);
  const not = answer.understood.filter(({ absent }) => absent);
  const pieces = (findings: Answer["understood"]) =>
    findings.map((finding) => (
      <FindingPiece key={keyOf(finding)} bench={bench} finding={finding} vocabulary={vocabulary} />
    ));
  const swaps = answer.swap?.tests.filter(({ source }) => source !== "travel") ?? [];
  return (
    <dl className={styles.read} aria-label="How it was read">
      <div>
        <dt>Understood</dt>
        <dd>
          {pieces(held)}
          {swaps.map((test, place) => (
            <SwapPiece
              key={`${test.a} ${test.b} ${place}`}
              bench={bench}
              test={test}
              vocabulary={vocabulary}
              says={bench.says}
            />
          ))}
          {held.length + swaps.length === 0 ? <span className={styles.nothing}>nothing yet</span> : null}
        </dd>
      </div>
      {not.length > 0 ? (
        <div>
          <dt>Taken as not so</dt>
          <dd>{pieces(not)}</dd>
        </div>
      ) : null}
      {answer.notUnderstood.length > 0 ? (
        <div>
          <dt>Not understood</dt>
          <dd>
            {answer.notUnderstood.map((words) => (
              <Piece key={words} hold="loose">
                {words}
              </Piece>
            ))}
            <span className={styles.nothing}>Say it another way, or tap it below.</span>
          </dd>
        </div>
      ) : null}
      {bench.leftOut.length > 0 ? (
        <div>
          <dt>Left out</dt>
          <dd>
            {bench.leftOut.map((name) => (
              <BenchLink key={name} to={putBack(bench, name)} className={styles.back}>
                <s>{leftOutWords(vocabulary, name)}</s> put back
              </BenchLink>
            ))}
          </dd>
        </div>
      ) : null}
    </dl>
  );
}
