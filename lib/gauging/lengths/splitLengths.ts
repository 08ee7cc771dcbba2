/**
 * Parts a row of lengths that were written into one field.
 *
 * Semicolons, line ends and a comma with a space behind it part lengths, and so does a space before a number; a comma without a
 * space is a decimal comma.
 *
 * @param text such as `.669 .671`, `.669 in, .671 in`, `16,88; 16,90 mm`
 * @returns the lengths as they were written, empty ones left out
 * @example splitLengths("16,88 16,90 mm") // ["16,88", "16,90 mm"]
 */
export function splitLengths(text: string): readonly string[] {
  return (
    text
      .split(/[;\n\r]|,(?=\s|$)/)
      // A fraction's whole number stays with it: 1 1/4 is one length.
      .flatMap((part) => part.trim().split(/\s+(?=[.,\d])(?!\d+\/)/))
      .map((part) => part.trim())
      .filter((part) => part !== "")
  );
}
