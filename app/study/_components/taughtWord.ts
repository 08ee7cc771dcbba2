/** From so many bits on a check taught that much. Chosen: an even yes or no tells one bit. */
const steps = [
  { from: 0.75, word: "much" },
  { from: 0.25, word: "some" },
  { from: 0.05, word: "little" },
] as const;

/** How much a check taught, in a word; the bits stand behind it. */
export const taughtWord = (gainBits: number) => steps.find(({ from }) => gainBits >= from)?.word ?? "nothing";
