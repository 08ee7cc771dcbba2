import type { Answer } from "@/lib/consult/answer";
import type { Check } from "@/lib/vocabulary/check";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import type { PistonView } from "./pistonView";
import { tapPlace } from "./tapPlace";
import styles from "./ValveSection.module.css";
import { sheetHeight, sheetWidth, type ValveLayout } from "./valveLayout";

type Props = Readonly<{
  bench: BenchQuery;
  understood: Answer["understood"];
  vocabulary: Vocabulary;
  view: PistonView;
  check: Check;
  layout: ValveLayout;
}>;

/** What a finger hits in the drawing: one link for each valve and place, a whole row high and a whole valve wide. */
export function StrokeTargets({ bench, understood, vocabulary, view, check, layout }: Props) {
  return (
    <svg
      className={styles.targets}
      viewBox={`0 0 ${sheetWidth} ${sheetHeight}`}
      aria-label="Places in the stroke"
    >
      {layout.valves.flatMap(({ number, centreX }) =>
        check.outcomes.map((outcome, row) => {
          const current = view.marks.some(({ valve, place }) => valve === number && place === row);
          const part = `${view.valve} ${number}`;
          return (
            <BenchLink
              key={`${number} ${outcome.id}`}
              to={tapPlace(bench, understood, vocabulary, { check: check.id, outcome: outcome.id, part })}
              className={styles.target}
              current={current}
              label={`Valve ${number}, ${outcome.label}${current ? ": take it away" : ""}`}
            >
              <rect
                x={centreX - layout.pitch / 2}
                y={layout.rowY(row) - layout.rowHeight / 2}
                width={layout.pitch}
                height={layout.rowHeight}
              />
            </BenchLink>
          );
        }),
      )}
    </svg>
  );
}
