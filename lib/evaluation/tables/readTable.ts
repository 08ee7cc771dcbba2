import { type ClassifiedTable, classify } from "./classify";
import { readArff } from "./readArff";
import { readCsv } from "./readCsv";

/** The first line of an ARFF file that is neither empty nor a comment. */
const arffStart = /^\uFEFF?(?:\s*(?:%[^\r\n]*)?[\r\n]+)*\s*@(?:relation|attribute|data)\b/i;

/**
 * Reads a data file, ARFF or CSV as its first line says, and sets the class apart.
 *
 * @param file as messages name it
 * @param className default: the last attribute
 * @throws TableFault as `readArff`, `readCsv` and `classify` do
 */
export function readTable(text: string, file: string, className?: string): ClassifiedTable {
  const isArff = /\.arff$/i.test(file) || arffStart.test(text);
  return classify(isArff ? readArff(text, file, className) : readCsv(text, file), className);
}
