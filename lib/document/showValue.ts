const longest = 60;

/**
 * Shows a value in an error text: short, on one line, with no control characters.
 *
 * @example showValue(undefined) // "nothing"
 */
export function showValue(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  const text =
    typeof value === "string" ? `'${value}'` : JSON.stringify(value, (_, inner) => printable(inner));
  const plain = text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, " ");
  return plain.length <= longest ? plain : `${plain.slice(0, longest - 1)}…`;
}

const printable = (value: unknown) => (typeof value === "bigint" ? String(value) : value);
