/** Words that keep their capital within a sentence: a note or shape by its letter, a people's name. */
const keepsCapital = /^(?:[B-Z](?![\p{L}])|English\b|French\b)/u;

/**
 * A label as it stands within a sentence: its first letter small, where it is not the name of a note or a people.
 *
 * @example lowerFirst("Casing dented") // "casing dented"
 * @example lowerFirst("G sharp key") // "G sharp key"
 */
export const lowerFirst = (words: string) =>
  keepsCapital.test(words) ? words : words.charAt(0).toLowerCase() + words.slice(1);
