import { dangerousKeys } from "../dangerousKeys";
import { noWords } from "./readPlainScalar";

/** Words that are no words to YAML, but give themselves when they are keys. */
const givenAsWritten: ReadonlySet<string> = new Set(["true", "false"]);

/** Tells whether a word without quotes may stand as a key without a second look. */
export const isPlainKey = (key: string) =>
  (!noWords.test(key) || givenAsWritten.has(key)) && !dangerousKeys.has(key);

/** The key that stands in quotes, or undefined where it needs a second look. */
export const quotedKey = (inside: string | undefined) =>
  inside === undefined || dangerousKeys.has(inside) ? undefined : inside;
