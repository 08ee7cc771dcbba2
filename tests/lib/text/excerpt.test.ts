import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { excerpt } from "@/lib/text/excerpt";
import { toTerm } from "@/lib/text/terms";

const filler = "Nothing to see in this sentence here. ".repeat(10).trim();
const shown = (runs: readonly Readonly<{ text: string }>[]) => runs.map(({ text }) => text).join("");
const marked = (runs: readonly Readonly<{ text: string; hit: boolean }>[]) =>
  runs.filter(({ hit }) => hit).map(({ text }) => text);
const terms = ["valve", "sticks"].map(toTerm);

describe("an excerpt", () => {
  it("is the whole of a short text, with every form of a term marked and nothing else", () => {
    expect(excerpt("The valve sticks;  it is sticking.", terms)).toEqual([
      { text: "The ", hit: false },
      { text: "valve", hit: true },
      { text: " ", hit: false },
      { text: "sticks", hit: true },
      { text: "; it is ", hit: false },
      { text: "sticking", hit: true },
      { text: ".", hit: false },
    ]);
  });

  it("is a text's beginning where nothing matches", () => {
    const runs = excerpt(filler, terms, 60);
    expect(marked(runs)).toEqual([]);
    expect(shown(runs)).toBe("Nothing to see in this sentence here. Nothing to see in this …");
  });

  it("is nothing of an empty text", () => {
    expect(excerpt(" \n ", terms)).toEqual([]);
  });

  it("is the stretch with the most terms, from the beginning of its sentence, with an ellipsis at either cut", () => {
    const text = `One valve here. ${filler} The valve sticks when warm. ${filler}`;
    const runs = excerpt(text, terms, 80);
    expect(marked(runs)).toEqual(["valve", "sticks"]);
    expect(shown(runs)).toMatch(/^… The valve sticks when warm\. Nothing .* …$/);
  });

  it("marks a term however far into the text and however long its neighbours are", () => {
    for (const before of [
      filler,
      `${filler} And so on to the`,
      "x".repeat(300),
      "a,".repeat(200),
      `${filler} ${"y".repeat(170)}`,
    ]) {
      for (const length of [20, 60, 180]) {
        expect(marked(excerpt(`${before} valve ${filler}`, terms, length))).toContain("valve");
      }
    }
  });

  it("joins to a stretch of the text, marks terms only, and is about as long as was asked", () => {
    const word = fc.oneof(
      fc.constantFrom("valve", "sticks", "Sticking", "in.", "the", "a", "Käfer", "end.\n", "x".repeat(90)),
      fc.string({ unit: "grapheme", maxLength: 12 }),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 80 }), fc.integer({ min: 20, max: 200 }), (words, length) => {
        const plain = words.join(" ").replace(/\s+/g, " ").trim();
        const runs = excerpt(words.join(" "), terms, length);
        const text = shown(runs.filter((run) => run.text !== "… " && run.text !== " …"));
        expect(plain).toContain(text);
        expect(text.length).toBeLessThanOrEqual(length);
        expect(shown(runs).length > 0).toBe(plain.length > 0);
        for (const hit of marked(runs)) expect(terms).toContain(toTerm(hit));
        for (const { text: run } of runs) expect(run).not.toBe("");
      }),
      { numRuns: 300 },
    );
  });
});
