import type { Check } from "@/lib/vocabulary/check";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import { partWords } from "../_components/partWords";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import { setSwap } from "./editBench";
import styles from "./SwapGrid.module.css";

type Props = Readonly<{ bench: BenchQuery; check: Check; vocabulary: Vocabulary }>;

/** Where a tried pair rubs: it tells a tight casing from a tight piston, so it is asked for. */
export function SwapPlaces({ bench, check, vocabulary }: Props) {
  const rubbing = bench.swaps.filter(({ result }) => result !== "free");
  return rubbing.map(({ guest, host, result, where }) => (
    <details key={`${guest} ${host} ${where}`} className={styles.where}>
      <summary>
        {partWords(vocabulary, guest)} in {partWords(vocabulary, host)} {result}:{" "}
        <b>{check.outcomes.find(({ id }) => id === where)?.label ?? "where?"}</b>
      </summary>
      <p className={controls.row}>
        {check.outcomes.map(({ id, label }) => (
          <BenchLink
            key={id}
            to={setSwap(bench, { guest, host }, { result, where: id === where ? null : id })}
            className={controls.plain}
            current={id === where}
          >
            {label}
          </BenchLink>
        ))}
      </p>
    </details>
  ));
}
