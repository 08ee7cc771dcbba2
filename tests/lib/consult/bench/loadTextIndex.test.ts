import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { loadTextIndex } from "@/lib/consult/bench/loadTextIndex";
import { searchText } from "@/lib/text/searchText";
import { buildTextIndex } from "@/lib/text/textIndex";
import { wordSimilarities } from "@/lib/text/wordSimilarities";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { toldBy } from "../../text/postings/toldBy";

const titles = ["valve sticks", "slide stuck", "cork gone", "pad leaks"];
const manyCases = (count = 300) =>
  Array.from({ length: count }, (_, at) =>
    makeCase({
      id: `c-${at}`,
      title: titles[at % titles.length],
      causes: [{ cause: "gummed-oil", role: "root" }],
    }),
  );
const casebookOf = (cases: readonly Case[]) => ({
  cases: new Map(cases.map((kase) => [kase.id, kase])),
  problems: [],
  hashes: new Map(cases.map(({ id, title }) => [id, title])),
});
const placeIn = (folder: string) => ({
  path: join(folder, "cache", "cases.ndjson"),
  nowMs: 0,
  mark: "m",
  worthWriting: 250,
});
const builtOf = (cases: readonly Case[], vocabulary = smallVocabulary) =>
  toldBy(buildTextIndex(cases, vocabulary).words);

describe("the text index of a casebook loaded with a snapshot", () => {
  it("is the one that would be built, the first time and the next, changes between them included", () => {
    const place = placeIn(temporaryFolder());
    const cases = manyCases();
    const load = (list: readonly Case[]) =>
      toldBy(loadTextIndex(casebookOf(list), smallVocabulary, place).words);
    expect(load(cases)).toEqual(builtOf(cases));
    expect(existsSync(`${place.path}.words`)).toBe(true);
    expect(load(cases)).toEqual(builtOf(cases));
    const changed = [...cases.slice(3), makeCase({ id: "c-1", title: "lever bent" })];
    expect(load(changed)).toEqual(builtOf(changed));
  });

  it("is taken from the snapshot and not built: what nobody asked to be looked at again stays", () => {
    const place = placeIn(temporaryFolder());
    const cases = manyCases();
    loadTextIndex(casebookOf(cases), smallVocabulary, place);
    // A case that changed behind its mark, and that is none of the samples.
    const other = cases.map((kase) => (kase.id === "c-7" ? makeCase({ id: "c-7", title: "zebra" }) : kase));
    const { hashes } = casebookOf(cases);
    const index = loadTextIndex({ ...casebookOf(other), hashes }, smallVocabulary, place);
    expect(wordSimilarities(index, "zebra")).toEqual(new Map());
  });

  it("is taken from it wherever in the file the index begins", () => {
    for (const id of ["c", "ca", "cas", "case"]) {
      const place = placeIn(temporaryFolder());
      const cases = [...manyCases(), makeCase({ id, title: "valve" })];
      loadTextIndex(casebookOf(cases), smallVocabulary, place);
      const other = cases.map((kase) => (kase.id === "c-7" ? makeCase({ id: "c-7", title: "zebra" }) : kase));
      const { hashes } = casebookOf(cases);
      const index = loadTextIndex({ ...casebookOf(other), hashes }, smallVocabulary, place);
      expect(wordSimilarities(index, "zebra")).toEqual(new Map());
    }
  });

  it("is built anew where words of the vocabulary have changed", () => {
    const place = placeIn(temporaryFolder());
    const cases = manyCases();
    loadTextIndex(casebookOf(cases), smallVocabulary, place);
    const causes = new Map(
      [...smallVocabulary.causes].map(([id, cause]) => [id, { ...cause, label: "Lacquer in the works" }]),
    );
    const vocabulary = { ...smallVocabulary, causes };
    const index = loadTextIndex(casebookOf(cases), vocabulary, place);
    expect(toldBy(index.words)).toEqual(builtOf(cases, vocabulary));
    expect(searchText(index, "lacquer")).toHaveLength(300);
  });

  it("is built anew where the snapshot is torn or a bit of it was turned over", () => {
    const place = placeIn(temporaryFolder());
    const cases = manyCases();
    const load = () => toldBy(loadTextIndex(casebookOf(cases), smallVocabulary, place).words);
    load();
    const sound = readFileSync(`${place.path}.words`);
    for (const at of [0, 30, 200, Math.floor(sound.length / 2), sound.length - 1]) {
      const flipped = Uint8Array.from(sound);
      flipped[at] = (flipped[at] ?? 0) ^ 4;
      for (const bytes of [flipped, sound.subarray(0, at)]) {
        writeFileSync(`${place.path}.words`, bytes);
        expect(load()).toEqual(builtOf(cases));
        expect(readFileSync(`${place.path}.words`).equals(sound)).toBe(true);
      }
    }
  });

  it("leaves no snapshot of a few cases, nor where there is no place for one", () => {
    const place = placeIn(temporaryFolder());
    const few = manyCases(20);
    expect(toldBy(loadTextIndex(casebookOf(few), smallVocabulary, place).words)).toEqual(builtOf(few));
    expect(toldBy(loadTextIndex(casebookOf(few), smallVocabulary, undefined).words)).toEqual(builtOf(few));
    expect(existsSync(`${place.path}.words`)).toBe(false);
  });
});
