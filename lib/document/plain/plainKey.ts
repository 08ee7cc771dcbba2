import { dangerousKeys } from "../dangerousKeys";

/** Words that YAML's core schema takes for no words, even as keys. */
const noWords: ReadonlySet<string> = new Set("null Null NULL true True TRUE false False FALSE".split(" "));

/** Tells whether a word may stand as a key without a second look. */
export const isPlainKey = (key: string) => !noWords.has(key) && !dangerousKeys.has(key);
