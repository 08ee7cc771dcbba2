import type { SwapTried } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import { Piece } from "../_components/Piece";
import { partWords } from "../_components/partWords";
import { BenchLink } from "./BenchLink";
import { type BenchQuery, swapResultSchema } from "./benchQuery";
import { leaveOutSwap, setSwap, takeBackSwap } from "./editBench";
import styles from "./Findings.module.css";
import { tappedSwap } from "./tappedSwap";

type Props = Readonly<{ bench: BenchQuery; test: SwapTried; vocabulary: Vocabulary; says: string }>;

/** One swap test as it was taken; a tap opens what it could have been instead, in place. */
export function SwapPiece({ bench, test, vocabulary, says }: Props) {
  const tapped = tappedSwap(test);
  const about = `${partWords(vocabulary, test.a)} in ${partWords(vocabulary, test.b)}`;
  return (
    <details className={styles.finding} name="finding">
      <summary>
        <Piece about={about}>{[test.result, test.depended].filter(Boolean).join(", ")}</Piece>
      </summary>
      <div className={styles.panel}>
        <p>{test.span ? <>From your words “{says.slice(...test.span)}”.</> : "Tapped by you."}</p>
        <p className={controls.row}>
          {swapResultSchema.options.map((result) => (
            <BenchLink
              key={result}
              to={setSwap(bench, { ...tapped, result })}
              className={controls.plain}
              current={result === test.result}
            >
              {result}
            </BenchLink>
          ))}
        </p>
        <p className={controls.row}>
          {test.source === "swaps" ? (
            <BenchLink to={takeBackSwap(bench, tapped)} className={controls.word}>
              Take it back
            </BenchLink>
          ) : (
            <BenchLink to={leaveOutSwap(bench, tapped)} className={controls.word}>
              Leave it out
            </BenchLink>
          )}
        </p>
      </div>
    </details>
  );
}
