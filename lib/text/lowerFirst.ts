/**
 * A label as it stands within a sentence: its first letter small.
 *
 * @example lowerFirst("Casing dented") // "casing dented"
 */
export const lowerFirst = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
