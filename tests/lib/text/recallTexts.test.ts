import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { packTexts } from "@/lib/text/packTexts";
import { recallTexts } from "@/lib/text/recallTexts";
import { searchText } from "@/lib/text/searchText";
import { buildTextIndex } from "@/lib/text/textIndex";
import { wordSimilarities } from "@/lib/text/wordSimilarities";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { toldBy } from "./postings/toldBy";

const byId = (cases: readonly Case[]) => new Map(cases.map((kase) => [kase.id, kase]));
/** A mark that is another whenever the words of a case are. */
const marksOf = (cases: ReadonlyMap<string, Case>) =>
  new Map([...cases].map(([id, { title, story }]) => [id, `${title} ${story}`]));
const pack = (cases: ReadonlyMap<string, Case>, marks = marksOf(cases)) =>
  packTexts(buildTextIndex(cases.values(), smallVocabulary), marks);
const recall = (bytes: Uint8Array, cases: ReadonlyMap<string, Case>, marks = marksOf(cases)) =>
  recallTexts(bytes, cases, smallVocabulary, marks);

const someCases = fc
  .uniqueArray(
    fc.record({
      id: fc.constantFrom("a", "b", "c", "d", "e", "f"),
      title: fc.constantFrom("valve sticks", "slide stuck", "cork gone"),
      story: fc.constantFrom("oiled", "pulled and oiled", ""),
    }),
    { selector: ({ id }) => id },
  )
  .map((list) => byId(list.map((fields) => makeCase(fields))));

describe("a text index recalled", () => {
  it("is the one that would be built, whatever cases came, went or changed since", () => {
    fc.assert(
      fc.property(someCases, someCases, (then, now) => {
        const recalled = recall(pack(then), now);
        const built = buildTextIndex(now.values(), smallVocabulary);
        if (!recalled) throw new Error("it must be recalled; got nothing; mend recallTexts");
        expect(toldBy(recalled.index.words)).toEqual(toldBy(built.words));
        expect(searchText(recalled.index, "valve oil").map(({ id, score }) => ({ id, score }))).toEqual(
          searchText(built, "valve oil").map(({ id, score }) => ({ id, score })),
        );
        expect(wordSimilarities(recalled.index, "slide cork")).toEqual(wordSimilarities(built, "slide cork"));
      }),
    );
  });

  it("says how many cases were not the same", () => {
    const cases = byId(["a", "b", "c"].map((id) => makeCase({ id, title: "valve" })));
    expect(recall(pack(cases), cases)?.changed).toBe(0);
    const changed = new Map([...cases, ["b", makeCase({ id: "b", title: "slide" })]]);
    expect(recall(pack(cases), changed)?.changed).toBe(1);
    expect(recall(pack(cases), new Map())?.changed).toBe(3);
  });

  it("takes a case without a mark for another each time", () => {
    const cases = byId(["a", "b"].map((id) => makeCase({ id, title: "valve" })));
    expect(recall(pack(cases, new Map()), cases, new Map())?.changed).toBe(2);
  });

  it("is none where cases would be indexed otherwise today, though their marks are the same", () => {
    const then = byId([makeCase({ id: "a", title: "valve sticks" })]);
    const now = byId([makeCase({ id: "a", title: "slide stuck" })]);
    expect(recall(pack(then), now, marksOf(then))).toBeUndefined();
  });

  it("is none of bytes of another kind", () => {
    const cases = byId([makeCase({ id: "a", title: "valve" })]);
    const bytes = pack(cases);
    for (let length = 0; length < bytes.length; length += 1) {
      expect(recall(bytes.subarray(0, length), cases)).toBeUndefined();
    }
    expect(recall(new TextEncoder().encode("[]\n{}"), cases)).toBeUndefined();
  });
});
