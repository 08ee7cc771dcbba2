import type { Answer } from "@/lib/consult/answer";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { Section } from "../_components/Section";
import type { BenchQuery } from "./benchQuery";
import { PlaceLabel } from "./PlaceLabel";
import type { PistonView } from "./pistonView";
import { StrokeTargets } from "./StrokeTargets";
import { ValveDrawing } from "./ValveDrawing";
import styles from "./ValveSection.module.css";
import { layOutValves, sheetHeight, sheetWidth } from "./valveLayout";
import { WayChoice } from "./WayChoice";

type Props = Readonly<{
  bench: BenchQuery;
  understood: Answer["understood"];
  vocabulary: Vocabulary;
  view: PistonView;
}>;

/** The valves in section, as many as the instrument has: tap the place in the stroke where one catches. */
export function ValveSection({ bench, understood, vocabulary, view }: Props) {
  const { placeCheck, marks, count } = view;
  if (!placeCheck) return null;
  const layout = layOutValves(count, placeCheck.outcomes.length);
  const told = marks.map(({ valve, place }) => `Valve ${valve}: ${placeCheck.outcomes[place]?.label}.`);
  return (
    <Section title="Where in the stroke" aside="Tap the place. Not to scale.">
      <div className={styles.drawing}>
        <svg
          viewBox={`0 0 ${sheetWidth} ${sheetHeight}`}
          role="img"
          aria-label={`${count} piston valves in section. ${told.join(" ")}`}
        >
          <defs>
            <pattern
              id="cut-face"
              width="5"
              height="5"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <path className={styles.hatch} d="M0 0v5" />
            </pattern>
          </defs>
          {layout.valves.map((valve) => (
            <ValveDrawing
              key={valve.number}
              valve={valve}
              layout={layout}
              place={marks.find((mark) => mark.valve === valve.number)?.place}
            />
          ))}
          {placeCheck.outcomes.map(({ id, label }, row) => (
            <g key={id}>
              <path className={styles.scribe} d={`M${layout.left} ${layout.rowY(row)}H${layout.right + 8}`} />
              <PlaceLabel
                words={label}
                x={layout.right + 12}
                y={layout.rowY(row)}
                isOn={marks.some(({ place }) => place === row)}
              />
            </g>
          ))}
        </svg>
        <StrokeTargets
          bench={bench}
          understood={understood}
          vocabulary={vocabulary}
          view={view}
          check={placeCheck}
          layout={layout}
        />
      </div>
      <WayChoice bench={bench} view={view} />
    </Section>
  );
}
