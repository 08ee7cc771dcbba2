import { notPlain } from "./notPlain";

/** Letters and digits of any script, and the few signs with which words of a case begin and that YAML gives no meaning. */
const firstSign = /^(?:[\p{L}\p{N}(./$£€+]|-[\p{L}\p{N}.])/u;
const plainNumber = /^(?:0|-?[1-9][0-9]{0,14})(?:\.[0-9]{1,15})?$/;
/** All that YAML's core schema takes for something else than words. */
export const noWords =
  /^(?:null|Null|NULL|true|True|TRUE|false|False|FALSE|0o[0-7]+|0x[0-9a-fA-F]+|[-+]?[0-9]+|[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?|[-+]?\.(?:inf|Inf|INF)|\.(?:nan|NaN|NAN))$/;

/**
 * Reads one value without quotes: words, a number as people write it, true or false.
 *
 * @param text one line, no space at either end
 * @returns the value by YAML's core schema, or `notPlain` where a sign in it might mean something
 */
export function readPlainScalar(text: string): string | number | boolean | typeof notPlain {
  if (!firstSign.test(text)) return notPlain;
  if (text.includes(": ") || text.endsWith(":") || text.includes(" #")) return notPlain;
  if (!noWords.test(text)) return text;
  if (plainNumber.test(text)) return Number(text);
  if (text === "true") return true;
  return text === "false" ? false : notPlain;
}
