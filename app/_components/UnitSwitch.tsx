import controls from "./controls.module.css";
import type { ShownUnit } from "./readUnit";
import { setUnit } from "./setUnit";

const units = [
  { value: "inch", label: "inch" },
  { value: "mm", label: "mm" },
] as const;

/** Inches or millimetres, for lengths wherever they are written or shown. */
export function UnitSwitch({ unit }: Readonly<{ unit: ShownUnit }>) {
  return (
    <form action={setUnit} className="unprinted">
      <span className={controls.either} role="group" aria-label="Write and show lengths in">
        {units.map(({ value, label }) => (
          <button key={value} type="submit" name="unit" value={value} aria-pressed={unit === value}>
            {label}
          </button>
        ))}
      </span>
    </form>
  );
}
