/**
 * Breaks words into lines for a drawing, where nothing wraps by itself.
 *
 * @param longest characters that a line may have; a single word may be longer
 * @example wrapWords("Two thirds of the way down", 16) // ["Two thirds of", "the way down"]
 */
export function wrapWords(words: string, longest: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > longest) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
