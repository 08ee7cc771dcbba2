/**
 * The name by which a part is told from others: small letters, single spaces.
 *
 * @param name as the technician wrote it
 * @returns empty when nothing was written
 * @example plainName(" Piston  2") // "piston 2"
 */
export function plainName(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}
