import { describe, expect, it } from "vitest";
import { warmSearchIndex } from "@/lib/text/searchIndex";
import { searchText } from "@/lib/text/searchText";
import { addToTextIndex, buildTextIndex } from "@/lib/text/textIndex";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const manyCases = Array.from({ length: 60 }, (_, at) => makeCase({ id: `c-${at}`, title: `Valve ${at}` }));
const newVersion = (at: number) => makeCase({ id: `c-${at}`, title: "Slide" });
const indexOf = () => buildTextIndex(manyCases, smallVocabulary);
const find = (index: ReturnType<typeof indexOf>, words: string) =>
  searchText(index, words).map(({ id, score }) => ({ id, score }));

describe("the index that is searched", () => {
  it("is empty until somebody searches, and then whole", () => {
    const index = indexOf();
    expect(index.search.documents.documentCount).toBe(0);
    expect(find(index, "valve")).toHaveLength(60);
    expect(index.search.waiting.size).toBe(0);
  });

  it("is filled beforehand a few cases at a time, others having their turn between", async () => {
    const index = indexOf();
    const sizes: number[] = [];
    await warmSearchIndex(index.search, async () => sizes.push(index.search.documents.documentCount));
    expect(sizes.at(-1)).toBe(60);
    expect(sizes.length).toBeGreaterThan(1);
    expect(find(index, "valve")).toEqual(find(indexOf(), "valve"));
  });

  it("tells of every case and version, were they put in while it was being filled", async () => {
    const index = indexOf();
    let turn = 0;
    await warmSearchIndex(index.search, async () => {
      turn += 1;
      if (turn > 1) return;
      // One that is in already, one that still waits, and a new one.
      addToTextIndex(index, newVersion(0), smallVocabulary, manyCases[0]);
      addToTextIndex(index, newVersion(59), smallVocabulary, manyCases[59]);
      addToTextIndex(index, makeCase({ id: "new", title: "Slide" }), smallVocabulary);
    });
    const built = buildTextIndex(
      [...manyCases.slice(1, 59), newVersion(0), newVersion(59), makeCase({ id: "new", title: "Slide" })],
      smallVocabulary,
    );
    expect(find(index, "slide").map(({ id }) => id)).toEqual(["c-0", "c-59", "new"]);
    expect(find(index, "valve")).toHaveLength(58);
    for (const { id, score } of find(built, "valve slide")) {
      expect(find(index, "valve slide").find((hit) => hit.id === id)?.score).toBeCloseTo(score, 10);
    }
  });

  it("is whole for one who searches while it is being filled, and the filling ends", async () => {
    const index = indexOf();
    const found: number[] = [];
    await warmSearchIndex(index.search, async () => found.push(find(index, "valve").length));
    expect(found).toEqual([60]);
  });
});
