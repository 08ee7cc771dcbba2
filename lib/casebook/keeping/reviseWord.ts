import { readdirSync } from "node:fs";
import { join } from "node:path";
import { changeWordInText } from "../../vocabulary/changeWordInText";
import type { WordChange } from "../../vocabulary/wordChange";
import { type Editor, editFile } from "./editFile";

/** How a change of a word went: `moved` where another word stands there by now, or none; `busy` where others were writing. */
export type RevisedWord = "saved" | "moved" | "busy";

/**
 * Puts one frequency word of the handbook in place of another, in the file that tells of the cause; everything else in it
 * stays letter for letter.
 *
 * @param vocabulary the vocabulary folder
 * @throws what the disk throws
 */
export function reviseWord(change: WordChange, vocabulary: string, editor: Editor): RevisedWord {
  const folder = join(vocabulary, "causes");
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".yaml"))) {
    let isThere = false;
    const edited = editFile(
      { folder, file },
      (text) => {
        const changed = changeWordInText(text, change);
        isThere = changed.kind !== "absent";
        return changed.kind === "changed" ? changed.text : undefined;
      },
      editor,
    );
    if (edited !== "left") return edited;
    if (isThere) return "moved";
  }
  return "moved";
}
