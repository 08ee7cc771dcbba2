const words = ["Look", "Handle", "Open up", "Coax", "No way back"] as const;

/**
 * The word for a risk class.
 *
 * @param riskClass 0..4; anything beyond is taken as its nearest end
 * @example riskWord(4) // "No way back"
 */
export function riskWord(riskClass: number): string {
  return words[Math.min(4, Math.max(0, Math.trunc(riskClass)))] ?? words[4];
}
