import { formatPartRef, type PartRef } from "../../casebook/partRef";

/**
 * The name by which a swap test is left out, or put in place of another of the same pair.
 *
 * @example swapName({ a: piston2, b: casing1 }) // "swap piston 2 in casing 1"
 */
export const swapName = ({ a, b }: Readonly<{ a: PartRef; b: PartRef }>) =>
  `swap ${formatPartRef(a)} in ${formatPartRef(b)}`;
