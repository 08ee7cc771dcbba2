import type { Readings } from "./settleWay";

/** What stands before the parts of a whole number: the point or the comma. */
export const decimalMarks = ["point", "comma"] as const;
export type DecimalMark = (typeof decimalMarks)[number];

const shapes: Readonly<Record<DecimalMark, readonly [plain: RegExp, grouped: RegExp]>> = {
  point: [/^(\d+(\.\d*)?|\.\d+)$/, /^[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/],
  comma: [/^(\d+(,\d*)?|,\d+)$/, /^[1-9]\d{0,2}(\.\d{3})+(,\d*)?$/],
};

/**
 * Reads a number of 0 or more in both manners: `1,250` is one and a quarter with a decimal comma, else twelve hundred and
 * fifty. A currency's sign or three letters around it are passed over, and blanks or apostrophes between thousands.
 *
 * @returns by decimal mark the number; empty for what is none
 * @example amountReadings("€ 1.234,50") // comma: 1234.5
 */
export function amountReadings(text: string): Readings<DecimalMark, number> {
  const digits = text
    .trim()
    .replace(/^(\p{Sc}|[A-Z]{3}\b)\s*|\s*(\p{Sc}|\b[A-Z]{3})$/gu, "")
    .replace(/(?<=\d)['’\s](?=\d{3}(?!\d))/g, "")
    .replace(/[.,][-–—]$/, "");
  return new Map(
    decimalMarks.flatMap((mark): [DecimalMark, number][] => {
      if (!shapes[mark].some((shape) => shape.test(digits))) return [];
      const [group, decimal] = mark === "point" ? [",", "."] : [".", ","];
      const isGrouped = shapes[mark][1].test(digits);
      const plain = isGrouped ? digits.replaceAll(group, "") : digits;
      return [[mark, Number(plain.replace(decimal, "."))]];
    }),
  );
}
