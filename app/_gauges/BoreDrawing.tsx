import type { BoreSection } from "@/lib/gauging/bores/boreSection";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import styles from "./BoreDrawing.module.css";
import { type BoreScale, circleRadius } from "./boreLayout";

type Props = Readonly<{
  title: string;
  section: BoreSection;
  readings: readonly Readonly<{ angleDeg: number; diameterMm: number }>[];
  scale: BoreScale;
  lengths: LengthWords;
}>;

const width = 372;
const [centreX, centreY] = [width / 2, 186];

/** A point on the sheet: 0 degrees at the top, going round as the clock does. */
function place(deg: number, radius: number): readonly [number, number] {
  const turn = (deg * Math.PI) / 180;
  return [round(centreX + radius * Math.sin(turn)), round(centreY - radius * Math.cos(turn))];
}
const round = (value: number) => Math.round(value * 10) / 10;

/** One section of a bore, its departure from round drawn many times as strong, and that scale printed under it. */
export function BoreDrawing({ title, section, readings, scale, lengths }: Props) {
  const { oval, besideDent, press, dent } = section;
  const fit = besideDent.kind === "fitted" ? besideDent : oval;
  if (fit.kind !== "fitted") return null;
  const { meanMm, amplitudeMm, widestDeg } = fit;
  const radiusAt = (deg: number) =>
    circleRadius + scale.unitsPerMm * amplitudeMm * Math.cos((2 * (deg - (widestDeg ?? 0)) * Math.PI) / 180);
  const outline = Array.from({ length: 72 }, (_, step) => place(step * 5, radiusAt(step * 5)).join(" "));
  const odd = dent.kind === "dent" || dent.kind === "high" ? dent.index : undefined;
  const [one, other] = press.kind === "press" ? press.atDeg : [undefined, undefined];
  const isOval = press.kind === "press" || press.kind === "slight";
  return (
    <svg
      className={styles.bore}
      viewBox={`0 0 ${width} 412`}
      role="img"
      aria-label={`${title}, seen from its end: longest less shortest ${lengths.difference(4 * amplitudeMm)}${
        one === undefined
          ? ""
          : `, widest at ${Math.round(one)} degrees: press there and at ${Math.round(other ?? 0)}`
      }. Shape drawn ${scale.exaggeration} times as strong as its size.`}
    >
      <path className={styles.metal} d={`M${outline.join("L")}z`} />
      <circle className={styles.round} cx={centreX} cy={centreY} r={circleRadius} />
      {[0, 90, 180, 270].map((deg) => (
        <text key={deg} x={place(deg, 168)[0]} y={place(deg, 168)[1] + 5} textAnchor="middle">
          {deg}°
        </text>
      ))}
      {readings.flatMap(({ angleDeg, diameterMm }, index) =>
        [0, 180].map((half) => {
          const at = circleRadius + (scale.unitsPerMm * (diameterMm - meanMm)) / 2;
          const [x, y] = place(angleDeg + half, at);
          return index === odd ? (
            <circle key={`${index} ${half}`} className={styles.odd} cx={x} cy={y} r="8" />
          ) : (
            <rect
              key={`${index} ${half}`}
              className={styles.mine}
              x={x - 3.5}
              y={y - 3.5}
              width="7"
              height="7"
            />
          );
        }),
      )}
      {!isOval || widestDeg === null ? null : (
        <>
          <path className={styles.axis} d={line(widestDeg, radiusAt(widestDeg))} />
          <path className={styles.short} d={line(widestDeg + 90, radiusAt(widestDeg + 90))} />
          {(press.kind === "press" ? press.atDeg : []).map((deg) => (
            <Arrow key={deg} deg={deg} radius={radiusAt(deg) + 6} />
          ))}
          <Size deg={upperEnd(widestDeg)} words={lengths.size(meanMm + 2 * amplitudeMm)} />
          <Size deg={upperEnd(widestDeg + 90) + 180} words={lengths.size(meanMm - 2 * amplitudeMm)} />
        </>
      )}
      <g transform="translate(20 396)">
        <path className={styles.jaw} d={`M0-12v12h${round(scale.jaw.length)}v-12`} />
        <text x={scale.jaw.length + 10} y="2">
          {scale.jaw.words}
        </text>
      </g>
    </svg>
  );
}

const line = (deg: number, radius: number) =>
  `M${place(deg, radius).join(" ")}L${place(deg + 180, radius).join(" ")}`;

/** An arrow from outside onto the wall. */
function Arrow({ deg, radius }: Readonly<{ deg: number; radius: number }>) {
  const [x, y] = place(deg, radius);
  return (
    <path
      className={styles.press}
      transform={`translate(${x} ${y}) rotate(${round(deg)})`}
      d="M0 0-9-13h6v-15h6v15h6z"
    />
  );
}

/** A diameter's size beside its axis, on a ground that keeps it legible. */
function Size({ deg, words }: Readonly<{ deg: number; words: string }>) {
  const [x, y] = place(deg, 58);
  return (
    <text className={styles.size} x={x} y={y + 5} textAnchor="middle">
      {words}
    </text>
  );
}

/** The end of a diameter that lies in the upper half, 0 to the right of the top: one label goes above the centre, the other below. */
function upperEnd(deg: number): number {
  const turned = ((deg % 180) + 180) % 180;
  return turned < 90 ? turned : turned + 180;
}
