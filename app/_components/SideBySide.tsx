import { compareLines } from "@/lib/casebook/keeping/compareLines";
import styles from "./SideBySide.module.css";

type Props = Readonly<{ left: string; right: string; leftTitle: string; rightTitle: string }>;

/** Two versions of a file, line beside line; what is alike in both is left out but for a line on either side. */
export function SideBySide({ left, right, leftTitle, rightTitle }: Props) {
  const rows = compareLines(left, right);
  const isNear = (at: number) => [at - 1, at, at + 1].some((one) => rows[one] && !rows[one].same);
  const shown = rows.map((row, at) => ({ ...row, at })).filter(({ at }) => isNear(at));
  if (shown.length === 0) return <p className="small soft">Both are the same, word for word.</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reached by the keyboard too
    <div className={styles.scroll} tabIndex={0} role="group" aria-label={`${leftTitle}, ${rightTitle}`}>
      <table className={styles.versions}>
        <thead>
          <tr>
            <th scope="col">{leftTitle}</th>
            <th scope="col">{rightTitle}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ left: here, right: there, same, at }) => (
            <tr key={at} data-same={same ? "" : undefined}>
              <td data-only={!same && here !== undefined ? "left" : undefined}>{here}</td>
              <td data-only={!same && there !== undefined ? "right" : undefined}>{there}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
