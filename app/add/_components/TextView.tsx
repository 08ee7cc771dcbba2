import controls from "@/app/_components/controls.module.css";
import styles from "./TextView.module.css";

type Props = Readonly<{ text: string; onText: (text: string) => void; isWrong: boolean }>;

/** The case as the Markdown that it is kept as: fields between two lines of three hyphens, then the story. */
export function TextView({ text, onText, isWrong }: Props) {
  return (
    <div className={styles.text}>
      <label htmlFor="text">The whole file</label>
      <textarea
        id="text"
        name="text"
        value={text}
        rows={Math.min(60, Math.max(24, text.split("\n").length + 4))}
        className={controls.field}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={isWrong || undefined}
        aria-describedby={isWrong ? "problems" : undefined}
        onChange={(event) => onText(event.target.value)}
      />
    </div>
  );
}
