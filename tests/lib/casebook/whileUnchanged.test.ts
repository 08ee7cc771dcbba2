import { describe, expect, it } from "vitest";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import { putCase } from "@/lib/casebook/putCase";
import { whileUnchanged } from "@/lib/casebook/whileUnchanged";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const bookOf = (ids: readonly string[]): Casebook => ({
  cases: new Map(ids.map((id) => [id, makeCase({ id, received: `2025-01-0${id}` })])),
  problems: [],
});

/** Tells the cases' ids beside what was asked, and how often it was worked out. */
function teller() {
  let worked = 0;
  const tell = whileUnchanged((cases, _, prefix: string | undefined) => {
    worked += 1;
    return cases.map(({ id }) => `${prefix}${id}`);
  });
  return {
    worked: () => worked,
    tell: (book: Casebook, prefix?: string) => tell(book, smallVocabulary, prefix),
  };
}

describe("what is worked out of all cases", () => {
  it("is worked out once as long as no case comes, and anew when one does", () => {
    const { tell, worked } = teller();
    const book = bookOf(["1", "3"]);
    expect([tell(book, "a"), tell(book, "a"), worked()]).toEqual([["a3", "a1"], ["a3", "a1"], 1]);
    putCase(book, makeCase({ id: "2", received: "2025-01-02" }));
    expect([tell(book, "a"), worked()]).toEqual([["a3", "a2", "a1"], 2]);
    putCase(book, makeCase({ id: "2", received: "2025-01-09" }));
    expect([tell(book, "a"), worked()]).toEqual([["a2", "a3", "a1"], 3]);
  });

  it("is told apart by what else was asked, and by casebook", () => {
    const { tell, worked } = teller();
    const [book, other] = [bookOf(["1"]), bookOf(["2"])];
    for (let round = 1; round <= 2; round += 1) {
      expect([tell(book, "a"), tell(book), tell(other, "a")]).toEqual([["a1"], ["undefined1"], ["a2"]]);
    }
    expect(worked()).toBe(3);
  });

  it("is let go of where very much else was asked since", () => {
    const { tell, worked } = teller();
    const book = bookOf(["1"]);
    for (let number = 0; number < 30; number += 1) tell(book, `${number} `);
    expect([tell(book, "29 "), worked()]).toEqual([["29 1"], 30]);
    expect([tell(book, "0 "), worked()]).toEqual([["0 1"], 31]);
  });
});
