/**
 * Words as they begin a sentence: their first letter a capital.
 *
 * @example upperFirst("casing 3 binds") // "Casing 3 binds"
 */
export const upperFirst = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
