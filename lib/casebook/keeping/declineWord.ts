import { addDeclinedWord, declinedFile, readDeclinedWords } from "../../vocabulary/declinedWords";
import { isSameChange, type WordChange } from "../../vocabulary/wordChange";
import { type Editor, editFile } from "./editFile";

/** How remembering went: `broken` where the file of declined words cannot be read, and stays as it is. */
export type DeclinedWord = "saved" | "broken" | "busy";

/**
 * Remembers that a change of a word was decided against; remembered before, it is well and changes nothing.
 *
 * @param content the shop's content folder
 * @throws what the disk throws
 */
export function declineWord(change: WordChange, content: string, editor: Editor): DeclinedWord {
  let isBroken = false;
  const edited = editFile(
    { folder: content, file: declinedFile },
    (text) => {
      const { declined, problems } = readDeclinedWords(text);
      if (declined.some((one) => isSameChange(one, change))) return undefined;
      const added = addDeclinedWord(text, change);
      isBroken = problems.length > 0 || readDeclinedWords(added).declined.length !== declined.length + 1;
      return isBroken ? undefined : added;
    },
    editor,
  );
  if (isBroken) return "broken";
  return edited === "busy" ? "busy" : "saved";
}
