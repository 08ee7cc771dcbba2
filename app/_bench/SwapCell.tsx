import type { SwapTried } from "@/lib/consult/answer";
import { BenchLink } from "./BenchLink";
import type { BenchQuery, SwapResult } from "./benchQuery";
import { leaveOutSwap, type SwapPair, setSwap, takeBackSwap } from "./editBench";
import styles from "./SwapGrid.module.css";
import { SwapMark } from "./SwapMark";
import { tappedSwap } from "./tappedSwap";

type Props = Readonly<{
  bench: BenchQuery;
  pair: SwapPair;
  /** How it ran, as far as known; the worst where it was tried more than once. */
  tried: SwapTried | undefined;
  next: readonly [string, string] | null;
}>;

const round: Record<SwapResult, SwapResult | null> = { free: "drags", drags: "sticks", sticks: null };
const sourceWords = { says: "from your words", travel: "from how it travels", swaps: "tapped" } as const;
const inShort = { says: "said", travel: "its own" } as const;

/** One pair: a tap goes round free, drags, sticks, not tried, from wherever it was read. Dashed blue is the one to try next. */
export function SwapCell({ bench, pair, tried, next }: Props) {
  const result = tried?.result ?? null;
  const following = result === null ? "free" : round[result];
  const isNext = result === null && next !== null && next.includes(pair.guest) && next.includes(pair.host);
  const words = result ?? (isNext ? "try this" : "not tried");
  const from = tried ? `, ${sourceWords[tried.source]}` : "";
  return (
    <BenchLink
      to={tapCell(bench, pair, tried)}
      className={`${styles.cell} ${styles[result ?? "untried"]} ${isNext ? styles.next : ""}`}
      label={`${pair.guest} in ${pair.host}: ${words}${from}. Tap for ${following ?? "not tried"}.`}
    >
      <SwapMark result={result} />
      <span>{words}</span>
      {tried && tried.source !== "swaps" ? <small aria-hidden="true">{inShort[tried.source]}</small> : null}
    </BenchLink>
  );
}

/** The bench after a tap on a pair. Where it was not tried any more, what the words say of it holds again, or is left out if it held. */
function tapCell(bench: BenchQuery, pair: SwapPair, tried: SwapTried | undefined): BenchQuery {
  const untold = { ...pair, where: null, way: null, turned: null };
  if (!tried) return setSwap(bench, { ...untold, result: "free" });
  const following = round[tried.result];
  if (following !== null) return setSwap(bench, { ...tappedSwap(tried), ...pair, result: following });
  return tried.source === "swaps" ? takeBackSwap(bench, pair) : leaveOutSwap(bench, pair);
}
