import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { partWords } from "../_components/partWords";

/**
 * A finding that was left out, in words.
 *
 * @param name `check`, or `check part`
 * @example leftOutWords(vocabulary, "valve-travel valve 3") // "valve travel, valve 3"
 */
export function leftOutWords(vocabulary: Pick<Vocabulary, "checks" | "parts">, name: string): string {
  const [check = name, ...part] = name.split(" ");
  const label = vocabulary.checks.get(check)?.label.toLowerCase() ?? check;
  const where = partWords(vocabulary, part.length > 0 ? part.join(" ") : null);
  return where ? `${label}, ${where}` : label;
}
