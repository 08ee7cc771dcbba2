/** More different words than shops use; past it the memory starts anew. Chosen: some ten megabytes. */
const mostRemembered = 100_000;
/** Words longer than this are no words that come again. Chosen. */
const longestRemembered = 40;

/**
 * Makes a function of a word remember what it gave: the same words come again and again.
 *
 * @param read gives the same for the same word, never undefined
 */
export function rememberWords<Value extends NonNullable<unknown> | null>(
  read: (word: string) => Value,
): (word: string) => Value {
  const remembered = new Map<string, Value>();
  return (word) => {
    const known = remembered.get(word);
    if (known !== undefined) return known;
    const value = read(word);
    if (word.length <= longestRemembered) {
      if (remembered.size >= mostRemembered) remembered.clear();
      remembered.set(word, value);
    }
    return value;
  };
}
