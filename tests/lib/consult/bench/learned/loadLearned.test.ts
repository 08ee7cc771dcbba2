import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import { type BenchParts, buildBench, takeInCase } from "@/lib/consult/bench/bench";
import { learnCasebook, loadLearned } from "@/lib/consult/bench/learned/loadLearned";
import { consult } from "@/lib/consult/consult";
import { problemSchema } from "@/lib/consult/problem";
import { buildTextIndex } from "@/lib/text/textIndex";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { smallVocabulary } from "../../../reading/smallVocabulary";
import { expectAlike } from "../../expectAlike";
import { dentCase, dirtCase, secondDentCase, smallCase, springCase } from "../../smallCasebook";

const templates = [dentCase, dirtCase, springCase, secondDentCase];
/** As many cases as make a snapshot worth its while here, in versions that teach differently. */
const caseOf = (number: number, version: number): Case => {
  const kase = templates[(number + version) % templates.length] ?? dentCase;
  const status = version === 3 ? "open" : "closed";
  return { ...kase, id: `n-${number}`, status, title: `Number ${number}, version ${version}` };
};
const markOf = ({ id, title }: Case) => `${id} ${title}`;
const casebookOf = (cases: readonly Case[], former: readonly Case[] = []): Casebook => ({
  cases: new Map(cases.map((kase) => [kase.id, kase])),
  problems: [],
  hashes: new Map(cases.map((kase) => [kase.id, markOf(kase)])),
  former: new Map(former.map((kase) => [markOf(kase), kase])),
});
const manyCases = (version = 0, count = 40) => Array.from({ length: count }, (_, at) => caseOf(at, version));
const placeIn = (folder: string, worthWriting = 20) => ({
  path: join(folder, "cases.ndjson"),
  nowMs: 0,
  mark: "m",
  worthWriting,
});
const problem = problemSchema.parse({
  instrument: "trumpet",
  says: "2nd valve hangs, it was dropped down the stairs",
});

const indexText: BenchParts["indexText"] = ({ cases }, vocabulary) =>
  buildTextIndex(cases.values(), vocabulary);
const benchFrom = (
  casebook: Casebook,
  place: ReturnType<typeof placeIn> | undefined,
  vocabulary = smallVocabulary,
) =>
  buildBench(vocabulary, casebook, {
    indexText,
    learn: (book, teaching) => loadLearned(book, teaching, place),
  });
const builtAnew = (casebook: Casebook) =>
  buildBench(smallVocabulary, casebook, { indexText, learn: learnCasebook });
const answerOf = (bench: ReturnType<typeof benchFrom>) => consult(problem, bench, { plan: true });

describe("what the cases have taught, kept beside the snapshot", () => {
  it("is what learning anew gives, whatever cases came, went, changed or were opened since", () => {
    const place = placeIn(temporaryFolder());
    const then = manyCases();
    benchFrom(casebookOf(then), place);
    expect(existsSync(`${place.path}.learned`)).toBe(true);
    const changes = fc.array(fc.tuple(fc.nat({ max: 45 }), fc.constantFrom(1, 2, 3, undefined)), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(changes, (list) => {
        const now = new Map(then.map((kase) => [kase.id, kase]));
        for (const [number, version] of list) {
          if (version === undefined) now.delete(`n-${number}`);
          else now.set(`n-${number}`, caseOf(number, version));
        }
        const casebook = casebookOf([...now.values()], then);
        expectAlike(answerOf(benchFrom(casebook, place)), answerOf(builtAnew(casebook)), 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it("takes cases in afterwards as what was learned anew does", () => {
    const place = placeIn(temporaryFolder());
    const casebook = casebookOf(manyCases());
    benchFrom(casebook, place);
    const [recalled, anew] = [benchFrom(casebook, place), builtAnew(casebook)];
    for (const bench of [recalled, anew]) {
      takeInCase(bench, caseOf(3, 2));
      takeInCase(bench, smallCase("new", { path: [], causes: [{ cause: "dirt", role: "root" }] }));
    }
    expectAlike(answerOf(recalled), answerOf(anew), 1e-9);
  });

  it("is recalled and not learned anew: a case that changed behind its mark, and is none of the samples, stays as it was", () => {
    const place = placeIn(temporaryFolder());
    const then = manyCases();
    benchFrom(casebookOf(then), place);
    const { hashes } = casebookOf(then);
    // Every fourth id is a sample, in the order of their letters: "n-15" has seven before it.
    const behind = then.map((kase) => (kase.id === "n-15" ? { ...caseOf(15, 1), title: kase.title } : kase));
    const recalled = benchFrom({ ...casebookOf(behind), hashes }, place);
    expect(recalled.model.lessons()).toEqual(builtAnew(casebookOf(then)).model.lessons());
  });

  it("is learned anew where a sample would teach something else today", () => {
    const place = placeIn(temporaryFolder());
    const then = manyCases();
    benchFrom(casebookOf(then), place);
    const { hashes } = casebookOf(then);
    const other = casebookOf(then.map((kase) => ({ ...kase, story: `${kase.story} Zebra.` })));
    const bench = benchFrom({ ...other, hashes }, place);
    expect(bench.spoken.lessons().terms).toContain("zebra");
  });

  it("is learned anew where a case that taught is known to nobody any more, or too many have changed", () => {
    const place = placeIn(temporaryFolder());
    benchFrom(casebookOf(manyCases()), place);
    for (const casebook of [
      casebookOf([caseOf(0, 1), ...manyCases().slice(1)]),
      casebookOf(manyCases(1), manyCases()),
      casebookOf(manyCases().slice(0, 19), manyCases()),
    ]) {
      expectAlike(answerOf(benchFrom(casebook, place)), answerOf(builtAnew(casebook)), 1e-9);
    }
  });

  it("is learned anew where the handbook or the words of reading have changed", () => {
    const place = placeIn(temporaryFolder());
    const casebook = casebookOf(manyCases());
    benchFrom(casebook, place);
    const causes = new Map(
      [...smallVocabulary.causes].map(([id, cause]) => [id, { ...cause, prove: "Quagga." }]),
    );
    const words = {
      ...smallVocabulary.words,
      shortForms: { ...smallVocabulary.words.shortForms, stairs: "quagga" },
    };
    const causeNotes = new Map([["dirt", ["a quagga was in there"]]]);
    for (const vocabulary of [
      { ...smallVocabulary, causes },
      { ...smallVocabulary, causeNotes },
      { ...smallVocabulary, words },
    ]) {
      expect(benchFrom(casebook, place, vocabulary).spoken.lessons().terms).toContain("quagga");
    }
  });

  it("is learned anew where the file is torn or a bit of it was turned over", () => {
    const place = placeIn(temporaryFolder());
    const casebook = casebookOf(manyCases());
    benchFrom(casebook, place);
    const sound = readFileSync(`${place.path}.learned`);
    const expected = answerOf(builtAnew(casebook));
    for (const at of [0, 40, Math.floor(sound.length / 2), sound.length - 1]) {
      const flipped = Uint8Array.from(sound);
      flipped[at] = (flipped[at] ?? 0) ^ 4;
      for (const bytes of [flipped, sound.subarray(0, at)]) {
        writeFileSync(`${place.path}.learned`, bytes);
        expectAlike(answerOf(benchFrom(casebook, place)), expected, 1e-9);
        expect(readFileSync(`${place.path}.learned`).equals(sound)).toBe(true);
      }
    }
  });

  it("is not kept of a few cases, nor where there is no place for it, nor where a case has no mark", () => {
    const place = placeIn(temporaryFolder());
    benchFrom(casebookOf(manyCases(0, 10)), place);
    benchFrom(casebookOf(manyCases()), undefined);
    const { hashes, ...unmarked } = casebookOf(manyCases());
    benchFrom({ ...unmarked, hashes: new Map([...(hashes ?? [])].slice(1)) }, place);
    expect(existsSync(`${place.path}.learned`)).toBe(false);
  });
});
