import { join } from "node:path";
import { type DeclinedWords, declinedFile, readDeclinedWords } from "../../vocabulary/declinedWords";
import { codeOf } from "./diskFault";
import { readKept } from "./readKept";

/**
 * Reads which words of the handbook were left from the content folder; without the file there are none.
 *
 * @param content the content folder
 */
export function loadDeclinedWords(content: string): DeclinedWords {
  try {
    return readDeclinedWords(readKept({ file: declinedFile, path: join(content, declinedFile) }).text);
  } catch (error) {
    const code = codeOf(error);
    if (code === undefined) throw error;
    const received = `a file that cannot be opened (${code})`;
    return {
      declined: [],
      problems: [{ file: declinedFile, line: 0, field: "", received, expected: "leave to read it" }],
    };
  }
}
