import type { ReadLength } from "./readLength";

/**
 * Says in words why a written length was not counted.
 *
 * @param read what `readSize` made of it
 * @param place where it stands, in words; default nothing
 * @returns one line that begins with its kind (`implausible unit`, `unreadable`), or undefined for a length that counts
 * @example sizeFlag(readSize("16.88", "diameter")) // "implausible unit: '16.88': no unit was written with 16.88; write 16.88 mm"
 */
export function sizeFlag(read: ReadLength, place = ""): string | undefined {
  const at = place === "" ? "" : `${place} `;
  switch (read.kind) {
    case "length":
      return undefined;
    case "question": {
      const could = read.could.map(({ write }) => write).join(" or ");
      return `implausible unit: ${at}'${read.got}': ${read.why}; ${could === "" ? "measure again" : `write ${could}`}`;
    }
    case "unreadable":
      return `unreadable: ${at}'${read.got}'; write ${read.write}`;
  }
}
