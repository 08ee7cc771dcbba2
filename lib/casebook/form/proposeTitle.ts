const longestTitle = 70;

/**
 * Proposes a case's title: the instrument and the complaint's beginning, cut between words.
 *
 * @param label the instrument's name
 * @example proposeTitle("Cornet", "Third valve hangs.") // "Cornet: Third valve hangs."
 */
export function proposeTitle(label: string, complaint: string): string {
  const whole = `${label}: ${complaint.replace(/\s+/g, " ").trim() || "on the bench"}`;
  if (whole.length <= longestTitle) return whole;
  const cut = whole.slice(0, longestTitle);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), label.length + 2)).replace(/[\s,;:.]+$/, "")} …`;
}
