import type { SwapTried } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { partWords } from "../_components/partWords";
import type { BenchQuery } from "./benchQuery";
import type { PistonView } from "./pistonView";
import styles from "./SwapGrid.module.css";
import { SwapHowChoices } from "./SwapHowChoices";

type Props = Readonly<{
  bench: BenchQuery;
  tests: readonly SwapTried[];
  view: PistonView;
  vocabulary: Vocabulary;
}>;

/** Where a tried pair rubs, which way and how turned: it tells a tight casing from a tight piston, so it is asked for. */
export function SwapPlaces({ bench, tests, view, vocabulary }: Props) {
  const rubbing = tests.filter(({ result, source }) => result !== "free" && source !== "travel");
  return rubbing.map((test) => (
    <details key={`${test.a} ${test.b} ${test.result} ${test.depended}`} className={styles.where}>
      <summary>
        {partWords(vocabulary, test.a)} in {partWords(vocabulary, test.b)} {test.result}:{" "}
        <b>{test.depended || "where?"}</b>
      </summary>
      <SwapHowChoices bench={bench} test={test} view={view} vocabulary={vocabulary} />
    </details>
  ));
}
