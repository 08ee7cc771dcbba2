import { groupOf, isGroup, textOf } from "./form/fieldTexts";

const longestSaid = 160;

/**
 * Says any step in words: its fields one after another, without its minutes, cut where they run long.
 *
 * @example sayStep({ swap: ["piston 1", "casing 2"], found: "free" }) // "swap piston 1, casing 2, found free"
 */
export function sayStep(step: unknown): string {
  const say = (value: unknown): string => {
    if (Array.isArray(value)) return value.map(say).join(", ");
    return isGroup(value)
      ? Object.entries(value)
          .map(([name, inner]) => `${name} ${say(inner)}`)
          .join(", ")
      : textOf(value);
  };
  const { minutes: _, ...fields } = groupOf(step);
  const words = isGroup(step) ? say(fields) : say(step);
  const line = words.replace(/\s+/g, " ").trim() || "an empty step";
  return line.length <= longestSaid ? line : `${line.slice(0, longestSaid - 1)}…`;
}
