import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Case } from "./caseFile";
import type { Casebook } from "./loadCasebook";
import { newestFirst } from "./newestFirst";

/** As many answers of one function are kept a casebook: more choices than somebody looks at in turn. Chosen. */
const mostKept = 24;

/**
 * Makes a function of all cases remember what it gave until a case is put into the casebook. That another list of the newest
 * comes then is what tells it; another vocabulary comes with another casebook.
 *
 * @param work gets all cases, the newest first; what it gives is handed out again and must not be written to
 * @param asked what else `work` gets, by which the answers are told apart
 */
export function whileUnchanged<Value, Asked extends readonly (string | undefined)[] = []>(
  work: (cases: readonly Case[], vocabulary: Vocabulary, ...asked: Asked) => Value,
): (casebook: Casebook, vocabulary: Vocabulary, ...asked: Asked) => Value {
  const kept = new WeakMap<readonly Case[], Map<string, Readonly<{ value: Value }>>>();
  return (casebook, vocabulary, ...asked) => {
    const cases = newestFirst(casebook);
    const answers = kept.get(cases) ?? new Map<string, Readonly<{ value: Value }>>();
    kept.set(cases, answers);
    const key = JSON.stringify(asked);
    const known = answers.get(key);
    if (known) return known.value;
    const value = work(cases, vocabulary, ...asked);
    const [oldest] = answers.keys();
    if (answers.size >= mostKept && oldest !== undefined) answers.delete(oldest);
    answers.set(key, { value });
    return value;
  };
}
