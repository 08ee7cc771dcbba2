/**
 * Tells whether a text has every word that was typed, each from the beginning of one of its words on, capitals aside.
 * Nothing typed matches everything.
 *
 * @example matchesWords("Measure the bore", "bor mea") // true
 */
export function matchesWords(text: string, typed: string): boolean {
  const begun = wordsOf(typed);
  if (begun.length === 0) return true;
  const words = wordsOf(text);
  return begun.every((start) => words.some((word) => word.startsWith(start)));
}

const wordsOf = (text: string) =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
