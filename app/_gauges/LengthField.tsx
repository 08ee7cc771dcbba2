import controls from "../_components/controls.module.css";
import styles from "./Fields.module.css";
import type { GaugesFields } from "./gaugesFields";

type Props = Readonly<{
  name: string;
  label: string;
  fields: GaugesFields;
  /** Shown where nothing is written: such as `.669 .670`. */
  such?: string;
  /** For parts: words, not lengths. */
  words?: boolean;
}>;

/** One field of the page with its label; what is in it stands in the address. */
export function LengthField({ name, label, fields, such, words = false }: Props) {
  return (
    <label className={styles.field}>
      <span>{label}</span>
      <input
        name={name}
        defaultValue={fields[name] ?? ""}
        placeholder={such}
        inputMode={words ? "text" : "decimal"}
        className={controls.field}
        maxLength={200}
        spellCheck={false}
      />
    </label>
  );
}
