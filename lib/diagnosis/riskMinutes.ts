/**
 * What doing something of each risk class may cost beyond its minutes: chance of harm times the minutes that the harm costs.
 * Chosen, common practice.
 */
const minutesOfClass = [0, 0.3, 2, 20, 120] as const;

/**
 * The minutes to reckon for the risk of a class.
 *
 * @param riskClass 0 (look, listen, ask) to 4 (cannot be undone)
 * @returns 0 for a class that there is not
 */
export function riskMinutes(riskClass: number): number {
  return minutesOfClass[riskClass] ?? 0;
}
