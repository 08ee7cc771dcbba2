import { nearestWord } from "../../document/nearestWord";
import type { ColumnBuilder } from "./columnBuilder";

/** How many values a message lists at most. */
const mostListed = 12;

/**
 * Builds a nominal column.
 *
 * @param declared the values that may stand in it; undefined takes every value as it comes
 */
export function nominalBuilder(name: string, declared?: readonly string[]): ColumnBuilder {
  const values = [...(declared ?? [])];
  const codeOf = new Map(values.map((value, code) => [value, code]));
  const codes: number[] = [];
  return {
    add: (cell) => {
      let code = cell === undefined ? -1 : codeOf.get(cell);
      if (code === undefined && cell !== undefined) {
        if (declared) return offer(cell, declared);
        code = values.length;
        values.push(cell);
        codeOf.set(cell, code);
      }
      codes.push(code ?? -1);
      return undefined;
    },
    build: () => ({ kind: "nominal", name, values, codes: Int32Array.from(codes) }),
  };
}

function offer(cell: string, declared: readonly string[]): string {
  const near = nearestWord(cell, declared);
  const listed = declared.slice(0, mostListed).join(", ");
  const more = declared.length > mostListed ? ", ..." : "";
  return `${near === undefined ? "" : `${near}, or `}one of the declared values (${listed}${more}), or declare it`;
}
