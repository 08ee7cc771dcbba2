import type { SwapAnswer } from "@/lib/consult/answer";
import { upperFirst } from "@/lib/text/upperFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { partWords } from "../_components/partWords";
import styles from "./SwapGrid.module.css";

type Props = Readonly<{
  swap: Pick<SwapAnswer, "suspects" | "splits" | "nextSwap" | "contradictions">;
  vocabulary: Vocabulary;
}>;

/** What the swaps say together: the suspects, who is cleared, what would settle it, what contradicts. */
export function SwapVerdict({ swap, vocabulary }: Props) {
  const named = (standing: SwapAnswer["suspects"][number]["standing"]) =>
    swap.suspects
      .filter((suspect) => suspect.standing === standing)
      .map(({ part }) => partWords(vocabulary, part) ?? part)
      .join(", ");
  const suspects = named("suspect");
  const possible = named("possible");
  const cleared = named("cleared");
  return (
    <div className={styles.verdict} role="status">
      {suspects ? (
        <p>
          <b>{upperFirst(suspects)}</b>: under suspicion.
        </p>
      ) : null}
      {possible ? <p>{upperFirst(possible)}: could be.</p> : null}
      {cleared ? <p className={styles.cleared}>{upperFirst(cleared)}: cleared.</p> : null}
      {swap.splits.map((words) => (
        <p key={words} className="small">
          {words}
        </p>
      ))}
      {swap.contradictions.map((words) => (
        <p key={words} className={styles.contradiction}>
          {words}
        </p>
      ))}
      {swap.nextSwap ? (
        <p className="small">
          {upperFirst(partWords(vocabulary, swap.nextSwap[0]) ?? "")} in{" "}
          {partWords(vocabulary, swap.nextSwap[1])} would tell most.
        </p>
      ) : null}
    </div>
  );
}
