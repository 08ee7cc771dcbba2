import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { partWords } from "../_components/partWords";

/**
 * A finding or a swap test that was left out, in words.
 *
 * @param name `check`, `check part`, or `swap piston 2 in casing 1`
 * @example leftOutWords(vocabulary, "valve-travel valve 3") // "valve travel, valve 3"
 */
export function leftOutWords(vocabulary: Pick<Vocabulary, "checks" | "parts">, name: string): string {
  if (name.startsWith("swap ")) return name;
  const [check = name, ...part] = name.split(" ");
  const label = vocabulary.checks.get(check)?.label.toLowerCase() ?? check;
  const where = partWords(vocabulary, part.length > 0 ? part.join(" ") : null);
  return where ? `${label}, ${where}` : label;
}
