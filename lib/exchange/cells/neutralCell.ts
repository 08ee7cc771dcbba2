import { formulaStart } from "./formulaStart";

/**
 * Makes a cell that no spreadsheet takes for a formula: a single quote goes before what could begin one. `plainCell` takes
 * exactly that quote away again.
 *
 * @example neutralCell("=1+1") // "'=1+1"
 */
export const neutralCell = (text: string) => (formulaStart.test(text) ? `'${text}` : text);
