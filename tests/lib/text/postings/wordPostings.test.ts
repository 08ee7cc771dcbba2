import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addText } from "@/lib/text/postings/addText";
import { dropTexts } from "@/lib/text/postings/dropTexts";
import { packPostings } from "@/lib/text/postings/packPostings";
import { removeText } from "@/lib/text/postings/removeText";
import { scoreTerm } from "@/lib/text/postings/scoreTerm";
import { unpackPostings } from "@/lib/text/postings/unpackPostings";
import { makeWordPostings } from "@/lib/text/postings/wordPostings";
import { toldBy } from "./toldBy";

const field = fc
  .array(fc.constantFrom("valve", "slide", "cork", "the", "pad", "spring", "½"), { maxLength: 6 })
  .map((list) => list.join(" "));
const coming = fc.record({ id: fc.constantFrom("a", "b", "c", "d", "é"), fields: fc.tuple(field, field) });

/** Texts come and go one after another; an empty first field stands for going. */
function comeAndGo(comings: readonly Readonly<{ id: string; fields: [string, string] }>[]) {
  const postings = makeWordPostings([2, 1]);
  const left = new Map<string, readonly string[]>();
  for (const { id, fields } of comings) {
    const before = left.get(id);
    if (before) removeText(postings, id, before);
    if (before && fields[0] === "") left.delete(id);
    else {
      addText(postings, id, fields);
      left.set(id, fields);
    }
  }
  return { postings, left };
}

const made = (texts: ReadonlyMap<string, readonly string[]>) => {
  const postings = makeWordPostings([2, 1]);
  for (const [id, fields] of texts) addText(postings, id, fields);
  return postings;
};

describe("postings of words", () => {
  it("count texts, fields and repetitions of a term", () => {
    const postings = made(
      new Map([
        ["a", ["valve sticks", "the valve, the valves"]],
        ["b", ["", "sticky valve"]],
      ]),
    );
    expect(toldBy(postings).terms.valv).toEqual({
      texts: 2,
      textsByField: [1, 2],
      places: ["a,0,1", "a,1,2", "b,1,1"],
    });
    expect(postings.terms.has("the")).toBe(false);
    expect(postings.lengthTotals).toEqual([2, 5]);
  });

  it("are after any comings and goings as if made of the texts that are left", () => {
    fc.assert(
      fc.property(fc.array(coming, { maxLength: 25 }), (comings) => {
        const { postings, left } = comeAndGo(comings);
        expect(toldBy(postings)).toEqual(toldBy(made(left)));
        expect(postings.ids.length).toBeLessThanOrEqual(5);
        for (const { entries, length } of postings.terms.values()) {
          const keys = Array.from({ length }, (_, at) => entries[2 * at] ?? -1);
          expect(keys).toEqual([...new Set(keys)].sort((a, b) => a - b));
        }
      }),
    );
  });

  it("drop any texts at once as if each had been taken out by itself", () => {
    fc.assert(
      fc.property(fc.array(coming, { maxLength: 15 }), fc.subarray(["a", "b", "c", "x"]), (comings, ids) => {
        const { postings, left } = comeAndGo(comings);
        dropTexts(postings, ids);
        for (const id of ids) left.delete(id);
        expect(toldBy(postings)).toEqual(toldBy(made(left)));
        addText(postings, "new", ["valve slide", "cork pad"]);
        expect(toldBy(postings)).toEqual(
          toldBy(made(new Map([...left, ["new", ["valve slide", "cork pad"]]]))),
        );
      }),
    );
  });

  it("come back from their bytes as they were, and go on to be written to", () => {
    fc.assert(
      fc.property(fc.array(coming, { maxLength: 15 }), fc.nat({ max: 3 }), (comings, shift) => {
        const { postings, left } = comeAndGo(comings);
        const packed = packPostings(postings);
        // Wherever in a larger array the bytes lie.
        const within = Buffer.alloc(packed.length + shift);
        within.set(packed, shift);
        const back = unpackPostings(within.subarray(shift));
        expect(toldBy(back)).toEqual(toldBy(postings));
        for (const [id, fields] of left) removeText(back, id, fields);
        for (const [id, fields] of left) addText(back, id, [...fields].reverse());
        expect(toldBy(back)).toEqual(
          toldBy(made(new Map([...left].map(([id, fields]) => [id, [...fields].reverse()])))),
        );
      }),
    );
  });

  it("are refused where their bytes are too few", () => {
    const packed = packPostings(made(new Map([["a", ["valve slide", "cork"]]])));
    for (let length = 0; length < packed.length; length += 1) {
      expect(() => unpackPostings(packed.subarray(0, length))).toThrow();
    }
  });

  it("refuse an id that is there, a text that is not, and one that was never so, and stay as they were", () => {
    const postings = made(new Map([["a", ["valve", "cork"]]]));
    const before = toldBy(postings);
    expect(() => addText(postings, "a", ["", ""])).toThrow('got "a" again');
    expect(() => addText(postings, "b", [""])).toThrow("must have 2 fields; got 1");
    expect(() => removeText(postings, "b", ["", ""])).toThrow('got "b"');
    expect(() => removeText(postings, "a", ["valve", "slide"])).toThrow('got "slide" in "a"');
    expect(() => removeText(postings, "a", ["valve valve", "cork"])).toThrow('got "valv" in "a"');
    expect(toldBy(postings)).toEqual(before);
  });

  it("score by BM25+ as worked by hand", () => {
    const postings = makeWordPostings([1]);
    for (const [at, words] of [
      "valve sticks when hot",
      "third valve leaks air leaks badly",
      "pad leaks low note",
      "slide sticks",
    ].entries()) {
      addText(postings, String(at + 1), [words]);
    }
    const scores = (term: string) => [...scoreTerm(postings, term).scores];
    expect(scores("stick").map((score) => score.toFixed(6))).toEqual(["1.022515", "1.190005"]);
    const [valveAlone, valveBeside] = scores("valv");
    const [leaksTwice = 0, leaksOnce] = scores("leak");
    expect(valveAlone?.toFixed(6)).toBe("1.022515");
    expect(leaksOnce?.toFixed(6)).toBe("1.022515");
    // Two words found: the sum counts twice.
    expect((((valveBeside ?? 0) + leaksTwice) * 2).toFixed(6)).toBe("4.368858");
    expect(scores("zebra")).toEqual([]);
  });
});
