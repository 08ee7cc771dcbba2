import { formulaStart } from "./formulaStart";

/**
 * Takes the single quote away that `neutralCell` set before a cell, as spreadsheets do themselves.
 *
 * @returns for every text, `plainCell(neutralCell(text))` is that text
 */
export const plainCell = (text: string) =>
  text.startsWith("'") && formulaStart.test(text) ? text.slice(1) : text;
