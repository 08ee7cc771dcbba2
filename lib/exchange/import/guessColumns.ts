import { editDistance } from "../../document/editDistance";
import { normalWords } from "../cells/normalWords";
import { type ImportField, importFields, type Matching } from "./importField";

const fieldOfWords = new Map<string, ImportField>(
  importFields.flatMap(({ id, label, words }) =>
    [id, label, ...words].map((name): [string, ImportField] => [normalWords(name), id]),
  ),
);
/** Shorter headings are too near to one another for a slip to be told; a long one may have two. Chosen. */
const shortestGuessed = 5;
const longGuessed = 9;

/**
 * Guesses from the headings what each column says: first headings that are known, then those that are a slip away from one.
 * No field is guessed twice but the story; minutes and hours are not both taken. What fits nothing is left out.
 *
 * @param said columns by their place from 0 that somebody matched, also to nothing; they go before every guess
 */
export function guessColumns(
  headings: readonly string[],
  said: ReadonlyMap<number, ImportField | undefined> = new Map(),
): Matching {
  const matching = headings.map((_, at) => said.get(at));
  const isFree = (field: ImportField) =>
    field === "story" || !matching.some((taken) => taken === field || (isTime(taken) && isTime(field)));
  const offer = (at: number, field: ImportField | undefined) => {
    if (field && matching[at] === undefined && !said.has(at) && isFree(field)) matching[at] = field;
  };
  const names = headings.map(normalWords);
  for (const [at, name] of names.entries()) offer(at, fieldOfWords.get(name));
  for (const [at, name] of names.entries()) {
    if (name.length < shortestGuessed) continue;
    const slips = name.length < longGuessed ? 1 : 2;
    const near = [...fieldOfWords].find(
      ([known]) => known.length >= shortestGuessed && editDistance(name, known, slips) <= slips,
    );
    offer(at, near?.[1]);
  }
  return matching;
}

const isTime = (field: ImportField | undefined) => field === "minutes" || field === "hours";
