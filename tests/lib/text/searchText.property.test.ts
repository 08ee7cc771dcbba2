import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { searchText } from "@/lib/text/searchText";
import { addToTextIndex, buildTextIndex } from "@/lib/text/textIndex";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

/** Words of one stem each, none the beginning of another, none within a slip or two of another. */
const words = [
  "cork",
  "felt",
  "spring",
  "nickel",
  "thumb",
  "washer",
  "gasket",
  "plunger",
  "monel",
  "dent",
] as const;
const someWords = fc.array(fc.constantFrom(...words), { maxLength: 5 });

type Told = Readonly<{ title: string; complaint: string; lesson: string; maker: string; story: string }>;
const told: fc.Arbitrary<Told> = fc
  .tuple(someWords, someWords, someWords, someWords, someWords)
  .map((lists) => lists.map((list) => list.join(" ")))
  .map(([title = "", complaint = "", lesson = "", maker = "", story = ""]) => ({
    title,
    complaint,
    lesson,
    maker,
    story,
  }));

const caseOf = (id: string, { title, complaint, lesson, maker, story }: Told) =>
  makeCase({ id, title: `X ${title}.`, complaint: `X ${complaint}`, lessons: [`X ${lesson}`], maker, story });

/** The plain way: a map from each word to the cases in which it stands. */
function mapWords(all: ReadonlyMap<string, Told>): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>(words.map((word) => [word, new Set()]));
  for (const [id, fields] of all) {
    for (const word of Object.values(fields).join(" ").split(" ")) found.get(word)?.add(id);
  }
  return found;
}

const idsOf = (found: readonly Readonly<{ id: string }>[]) => new Set(found.map(({ id }) => id));

describe("a search for one whole word", () => {
  it("finds the cases that a plain map of words finds, in whatever field the word stands", () => {
    fc.assert(
      fc.property(fc.array(told, { maxLength: 8 }), (list) => {
        const all = new Map(list.map((fields, at) => [`case-${at}`, fields]));
        const index = buildTextIndex(
          [...all].map(([id, fields]) => caseOf(id, fields)),
          smallVocabulary,
        );
        for (const [word, ids] of mapWords(all)) expect(idsOf(searchText(index, word))).toEqual(ids);
      }),
    );
  });

  it("still does after cases were put in place of their earlier versions", () => {
    const change = fc.tuple(fc.nat({ max: 3 }), told);
    fc.assert(
      fc.property(fc.array(change, { maxLength: 12 }), (changes) => {
        const index = buildTextIndex([], smallVocabulary);
        const all = new Map<string, Told>();
        for (const [at, fields] of changes) {
          const id = `case-${at}`;
          const before = all.get(id);
          addToTextIndex(index, caseOf(id, fields), smallVocabulary, before && caseOf(id, before));
          all.set(id, fields);
        }
        for (const [word, ids] of mapWords(all)) expect(idsOf(searchText(index, word))).toEqual(ids);
      }),
    );
  });
});

describe("a search for several words", () => {
  it("finds the cases that hold them all; where none does, those that hold any", () => {
    fc.assert(
      fc.property(
        fc.array(told, { maxLength: 8 }),
        fc.uniqueArray(fc.constantFrom(...words), { minLength: 2, maxLength: 3 }),
        (list, asked) => {
          const all = new Map(list.map((fields, at) => [`case-${at}`, fields]));
          const index = buildTextIndex(
            [...all].map(([id, fields]) => caseOf(id, fields)),
            smallVocabulary,
          );
          const map = mapWords(all);
          const holds = (id: string) => (word: string) => map.get(word)?.has(id) === true;
          const ids = [...all.keys()];
          const every = ids.filter((id) => asked.every(holds(id)));
          const some = ids.filter((id) => asked.some(holds(id)));
          const hits = searchText(index, asked.join(" "));
          expect(idsOf(hits)).toEqual(new Set(every.length > 0 ? every : some));
          expect(hits.map(({ score }) => score)).toEqual(
            hits.map(({ score }) => score).sort((a, b) => b - a),
          );
        },
      ),
    );
  });

  it("ranks alike whatever the order in which the cases came", () => {
    fc.assert(
      fc.property(fc.array(told, { maxLength: 6 }), fc.constantFrom(...words), (list, word) => {
        const cases = list.map((fields, at) => caseOf(`case-${at}`, fields));
        const there = searchText(buildTextIndex(cases, smallVocabulary), word);
        const back = searchText(buildTextIndex([...cases].reverse(), smallVocabulary), word);
        expect(back.map(({ id }) => id)).toEqual(there.map(({ id }) => id));
      }),
    );
  });
});
