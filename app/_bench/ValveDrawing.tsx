import styles from "./ValveSection.module.css";
import type { ValveLayout, ValvePlan } from "./valveLayout";

type Props = Readonly<{
  valve: ValvePlan;
  layout: ValveLayout;
  /** Where it catches: index of the place from the top; undefined while it stands at rest. */
  place: number | undefined;
}>;

const coils = 16;
const springTop = 180;
const springFoot = 372;
/** How far the button sinks for one row of places: less than the piston, so that it stays clear of the felt. */
const buttonShare = 0.2;

/** One valve in section: button, stem, felt, caps, casing, piston with its windways, spring. */
export function ValveDrawing({ valve, layout: { half, pitch, rowHeight }, place }: Props) {
  const wall = Math.max(4, half / 6);
  const bore = half - wall;
  const skin = bore - 2;
  const down = (place ?? 0) * rowHeight;
  const button = half * 0.47;
  return (
    <g transform={`translate(${valve.centreX} 0)`}>
      <path className={styles.hollow} d={`M${-bore} 84H${bore}V380H${-bore}z`} />
      <path className={styles.steel} d={coil(bore * 0.63, springTop + down)} />
      <g transform={`translate(0 ${down})`}>
        <path className={styles.piston} d={`M${-skin} 96H${skin}V180H${-skin}z`} />
        <path className={styles.hollow} d={`M${-skin} 108H${skin}V125H${-skin}z`} />
        <path
          className={styles.hollow}
          d={`M${-skin} 136C${-skin * 0.2} 136 ${skin * 0.2} 150 ${skin} 150V167C${skin * 0.2} 167 ${-skin * 0.2} 153 ${-skin} 153z`}
        />
      </g>
      <path className={styles.stem} d={`M-3 20H3V${96 + down}H-3z`} />
      <path
        className={styles.metal}
        d={`M${-half} 84h${wall}v296h${-wall}zM${bore} 84h${wall}v296h${-wall}z`}
      />
      <path
        className={styles.cutFace}
        d={`M${-half} 84h${wall}v296h${-wall}zM${bore} 84h${wall}v296h${-wall}z`}
      />
      <path
        className={styles.metal}
        d={`M${-half - 2} 70H${half + 2}V85H${-half - 2}zM${-half - 2} 379H${half + 2}V392H${-half - 2}z`}
      />
      <path className={styles.felt} d="M-11 60h22v10h-22z" />
      <g transform={`translate(0 ${down * buttonShare})`}>
        <path className={styles.metal} d={`M${-button} 8H${button}v7l-6 5H${6 - button}l-6 -5z`} />
      </g>
      <text className={styles.number} x="0" y="408" textAnchor="middle">
        {valve.number}
      </text>
      {place === undefined ? null : <path className={styles.mine} d={jaws(pitch / 2 - 1.5, 96 + down)} />}
    </g>
  );
}

/** The spring, as a zigzag from under the piston to the bottom cap. */
function coil(reach: number, top: number): string {
  const step = (springFoot - top) / coils;
  const turns = Array.from({ length: coils + 1 }, (_, turn) => {
    const x = turn % 2 === 0 ? -reach : reach;
    return `${x.toFixed(1)} ${(top + turn * step).toFixed(1)}`;
  });
  return `M${turns.join("L")}`;
}

/** The hand's mark: two jaws about the place. */
function jaws(reach: number, y: number): string {
  return `M${-reach + 9} ${y - 20}H${-reach}v40h9M${reach - 9} ${y - 20}H${reach}v40h-9`;
}
