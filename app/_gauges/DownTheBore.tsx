import type { BoreMap } from "@/lib/gauging/bores/boreMap";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import type { ShownUnit } from "../_components/readUnit";
import styles from "./BoreDrawing.module.css";
import { scaleOf } from "./scale";

type Props = Readonly<{
  sections: BoreMap["sections"];
  pistonMm: number | undefined;
  unit: ShownUnit;
  lengths: LengthWords;
}>;

const [width, left, top, height] = [372, 78, 40, 220];

/** Least and most diameter along the depth, and the piston's as a line: nothing where fewer than two depths could be fitted. */
export function DownTheBore({ sections, pistonMm, unit, lengths }: Props) {
  const rows = sections
    .flatMap(({ depthMm, besideDent }) =>
      depthMm !== null && besideDent.kind === "fitted"
        ? [
            {
              depthMm,
              least: besideDent.meanMm - 2 * besideDent.amplitudeMm,
              most: besideDent.meanMm + 2 * besideDent.amplitudeMm,
            },
          ]
        : [],
    )
    .sort((a, b) => a.depthMm - b.depthMm);
  const [first, last] = [rows[0], rows.at(-1)];
  if (!first || !last || first.depthMm === last.depthMm) return null;
  const sizes = [...rows.flatMap(({ least, most }) => [least, most]), ...(pistonMm ? [pistonMm] : [])];
  const scale = scaleOf(sizes, unit, (mm) =>
    unit === "mm" ? mm.toFixed(2) : (mm / 25.4).toFixed(3).replace(/^0/, ""),
  );
  const x = (mm: number) => Math.round((left + (scale.percentOf(mm) / 100) * (width - left)) * 10) / 10;
  const y = (mm: number) =>
    Math.round((top + 16 + ((mm - first.depthMm) / (last.depthMm - first.depthMm)) * (height - 32)) * 10) /
    10;
  const band = [
    ...rows.map(({ least, depthMm }) => `${x(least)} ${y(depthMm)}`),
    ...rows.toReversed().map(({ most, depthMm }) => `${x(most)} ${y(depthMm)}`),
  ];
  return (
    <svg
      className={styles.down}
      viewBox={`0 0 ${width} 300`}
      role="img"
      aria-label={`Least and most diameter down the bore. ${rows
        .map(
          ({ depthMm, least, most }) =>
            `At ${lengths.depth(depthMm)}: ${lengths.size(least)} to ${lengths.size(most)}.`,
        )
        .join(" ")}`}
    >
      {scale.ticks.map(({ percent, label }, index) => {
        const at = left + (percent / 100) * (width - left);
        return (
          <g key={label}>
            <path className={styles.grid} d={`M${at} ${top - 8}V${top + height}`} />
            {/* Every other mark keeps its words apart from its neighbour's. */}
            {index % 2 === 0 ? (
              <text x={at} y={top - 16} textAnchor="middle">
                {label}
              </text>
            ) : null}
          </g>
        );
      })}
      <path className={styles.band} d={`M${band.join("L")}z`} />
      {rows.map(({ depthMm, least, most }) => (
        <g key={depthMm}>
          <text x={left - 12} y={y(depthMm) + 5} textAnchor="end">
            {lengths.depth(depthMm)}
          </text>
          <path
            className={styles.jaw}
            d={`M${x(least)} ${y(depthMm) - 8}v16M${x(most)} ${y(depthMm) - 8}v16M${x(least)} ${y(depthMm)}H${x(most)}`}
          />
        </g>
      ))}
      {pistonMm ? (
        <>
          <path className={styles.piston} d={`M${x(pistonMm)} ${top - 8}V${top + height}`} />
          <text className={styles.pistonName} x={x(pistonMm)} y={top + height + 22} textAnchor="middle">
            piston
          </text>
        </>
      ) : null}
    </svg>
  );
}
