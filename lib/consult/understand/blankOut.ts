/** Puts blanks in the place of some stretches of a text, so that all others stay where they are. */
export function blankOut(text: string, stretches: readonly (readonly [number, number])[]): string {
  return stretches.reduce(
    (said, [from, to]) => said.slice(0, from) + " ".repeat(to - from) + said.slice(to),
    text,
  );
}
