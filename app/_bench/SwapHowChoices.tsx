import type { SwapTried } from "@/lib/consult/answer";
import { upperFirst } from "@/lib/text/upperFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import { BenchLink } from "./BenchLink";
import type { BenchQuery, TappedHow } from "./benchQuery";
import { setSwap } from "./editBench";
import type { PistonView } from "./pistonView";
import styles from "./SwapGrid.module.css";
import { tappedSwap } from "./tappedSwap";

type Props = Readonly<{
  bench: BenchQuery;
  test: SwapTried;
  view: Pick<PistonView, "placeCheck" | "wayCheck">;
  vocabulary: Vocabulary;
}>;

/** What a swap's result depended on, to choose from: the place, the way, the turn; a tap on what holds takes it away. */
export function SwapHowChoices({ bench, test, view, vocabulary }: Props) {
  const tapped = tappedSwap(test);
  const turns = Object.entries(vocabulary.words.swapTurns).map(([id, [label = id]]) => ({ id, label }));
  const rows: readonly Readonly<{
    key: keyof TappedHow;
    question: string;
    choices: readonly Readonly<{ id: string; label: string }>[];
  }>[] = [
    { key: "where", question: "Where", choices: view.placeCheck?.outcomes ?? [] },
    { key: "way", question: "Which way", choices: view.wayCheck?.outcomes ?? [] },
    { key: "turned", question: "Turned in its place", choices: turns },
  ];
  return rows.map(({ key, question, choices }) =>
    choices.length > 0 ? (
      <p key={key} className={`${controls.row} ${styles.choices}`}>
        <span>{question}</span>
        {choices.map(({ id, label }) => (
          <BenchLink
            key={id}
            to={setSwap(bench, { ...tapped, [key]: tapped[key] === id ? null : id })}
            className={controls.plain}
            current={tapped[key] === id}
          >
            {upperFirst(label)}
          </BenchLink>
        ))}
      </p>
    ) : null,
  );
}
