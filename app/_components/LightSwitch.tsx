import styles from "./LightSwitch.module.css";
import type { Light } from "./readLight";
import { setLight } from "./setLight";

const lights = [
  { value: "desk", label: "Desk" },
  { value: "bench", label: "Dark" },
] as const;

/** Desk or dark; while neither was chosen the system decides, and the switch shows what it decided. */
export function LightSwitch({ light }: Readonly<{ light: Light | undefined }>) {
  return (
    <form action={setLight} aria-label="Light" className={styles.either} data-light={light ?? "system"}>
      {lights.map(({ value, label }) => (
        <button
          key={value}
          type="submit"
          name="light"
          value={value}
          aria-pressed={light === undefined ? undefined : light === value}
        >
          {label}
        </button>
      ))}
    </form>
  );
}
