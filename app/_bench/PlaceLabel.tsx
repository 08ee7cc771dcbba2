import styles from "./ValveSection.module.css";
import { wrapWords } from "./wrapWords";

type Props = Readonly<{ words: string; x: number; y: number; isOn: boolean }>;

const lineHeight = 17;
const longestLine = 15;
/** From the middle of a line to the foot of its letters. */
const toBaseline = 5;

/** The words beside a place in the stroke, on as many lines as they need, level with its mark. */
export function PlaceLabel({ words, x, y, isOn }: Props) {
  const lines = wrapWords(words, longestLine);
  const first = y + toBaseline - (lineHeight * (lines.length - 1)) / 2;
  return (
    <text className={isOn ? styles.on : styles.place}>
      {lines.map((line, place) => (
        <tspan key={line} x={x} y={first + place * lineHeight}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
