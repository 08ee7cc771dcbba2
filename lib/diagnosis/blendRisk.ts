/** Weight of what a risk class stands for against the record, in jobs. Chosen. */
const classJobs = 10;
/** What one harm costs on average: half a working day. Chosen. */
const harmMinutes = 240;

/**
 * Expected minutes of harm from doing something once: what its risk class stands for, moved by how often it has done harm.
 *
 *   (10 x class minutes + harmed x 240) / (10 + done)
 *
 * @param classMinutes of `riskMinutes`, 0 or more
 * @param record jobs in which it was done, and those in which it did harm
 * @example blendRisk(20, { done: 10, harmed: 1 }) // 22
 */
export function blendRisk(
  classMinutes: number,
  { done, harmed }: Readonly<{ done: number; harmed: number }>,
): number {
  return (classJobs * classMinutes + harmed * harmMinutes) / (classJobs + done);
}
