import controls from "@/app/_components/controls.module.css";
import { StateNote } from "@/app/_components/StateNote";
import styles from "./Taking.module.css";
import type { TakingProgress } from "./useTaking";

type Props = Readonly<{ progress: TakingProgress; onStop: () => void }>;

/** How far the taking in has come, with a way to stop it. */
export function Taking({ progress: { total, taken }, onStop }: Props) {
  return (
    <StateNote title={total === 0 ? "Getting the rows ready" : `${taken.length} of ${total} rows are in`}>
      <progress
        className={styles.bar}
        max={Math.max(1, total)}
        value={taken.length}
        aria-label="Rows taken in"
      />
      <p role="status">
        <button type="button" className={controls.plain} onClick={onStop}>
          Stop after these
        </button>
      </p>
    </StateNote>
  );
}
