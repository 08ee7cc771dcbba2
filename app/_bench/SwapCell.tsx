import { BenchLink } from "./BenchLink";
import type { BenchQuery, SwapResult, TappedSwap } from "./benchQuery";
import { setSwap } from "./editBench";
import styles from "./SwapGrid.module.css";
import { SwapMark } from "./SwapMark";

type Pair = Pick<TappedSwap, "guest" | "host">;
type Props = Readonly<{ bench: BenchQuery; pair: Pair; next: readonly [string, string] | null }>;

const round: Record<SwapResult, SwapResult | null> = { free: "drags", drags: "sticks", sticks: null };

/** One pair: a tap goes round free, drags, sticks, not tried. Dashed blue is the one to try next. */
export function SwapCell({ bench, pair, next }: Props) {
  const tried = bench.swaps.find(({ guest, host }) => guest === pair.guest && host === pair.host);
  const result = tried?.result ?? null;
  const following = result === null ? "free" : round[result];
  const isNext = result === null && next !== null && next.includes(pair.guest) && next.includes(pair.host);
  const words = result ?? (isNext ? "try this" : "not tried");
  return (
    <BenchLink
      to={setSwap(
        bench,
        pair,
        following === null ? null : { result: following, where: tried?.where ?? null },
      )}
      className={`${styles.cell} ${styles[result ?? "untried"]} ${isNext ? styles.next : ""}`}
      label={`${pair.guest} in ${pair.host}: ${words}. Tap for ${following ?? "not tried"}.`}
    >
      <SwapMark result={result} />
      <span>{words}</span>
    </BenchLink>
  );
}
