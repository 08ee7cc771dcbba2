const words: Readonly<Record<string, string>> = {
  fixed: "Fixed",
  improved: "Improved",
  "not-fixed": "Not fixed",
  declined: "Declined",
  open: "Still open",
};

/** How a job ended, in words; what is not known stands as it is. */
export function outcomeWord(outcome: string): string {
  return words[outcome] ?? outcome;
}
