import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { putCase } from "@/lib/casebook/putCase";
import { makeCase } from "@/tests/fixtures/makeCase";

const casebookOf = (cases: readonly Case[]) => ({
  cases: new Map(cases.map((kase) => [kase.id, kase])),
  problems: [],
});
const received = (id: string, day: string, title = "Untold") => makeCase({ id, received: day, title });

/** The plain way: sort all cases, at each call. */
const plainOrder = (cases: Iterable<Case>) =>
  [...cases].sort((a, b) =>
    a.received === b.received ? (a.id < b.id ? 1 : -1) : a.received < b.received ? 1 : -1,
  );

describe("the cases, newest first", () => {
  it("come by the day they were received, those of one day by id, the greater first", () => {
    const book = casebookOf([
      received("a", "2024-01-01"),
      received("b", "2024-03-01"),
      received("c", "2024-01-01"),
    ]);
    expect(newestFirst(book).map(({ id }) => id)).toEqual(["b", "c", "a"]);
  });

  it("are sorted once a casebook", () => {
    const book = casebookOf([received("a", "2024-01-01")]);
    expect(newestFirst({ ...book })).toBe(newestFirst(book));
  });

  it("are in order after any cases were put in, as if sorted anew", () => {
    const anyCase = fc
      .record({ id: fc.constantFrom("a", "b", "c", "d", "e"), day: fc.integer({ min: 1, max: 4 }) })
      .map(({ id, day }) => received(id, `2024-01-0${day}`));
    fc.assert(
      fc.property(fc.array(anyCase), fc.boolean(), (cases, isAskedBetween) => {
        const book = casebookOf([]);
        for (const kase of cases) {
          if (isAskedBetween) newestFirst(book);
          putCase(book, kase);
        }
        expect(newestFirst(book)).toEqual(plainOrder(book.cases.values()));
      }),
    );
  });
});

describe("putting a case into a casebook", () => {
  it("shows it to whoever holds the casebook, in the place of its earlier version", () => {
    const book = casebookOf([received("a", "2024-01-01"), received("b", "2024-02-01")]);
    const changed = received("a", "2024-03-01", "Told anew");
    putCase(book, changed);
    expect(book.cases.get("a")).toBe(changed);
    expect([...book.cases.keys()]).toEqual(["a", "b"]);
  });

  it("leaves a list that was given out before as it was", () => {
    const book = casebookOf([received("a", "2024-01-01")]);
    const before = newestFirst(book);
    putCase(book, received("b", "2024-02-01"));
    expect(before.map(({ id }) => id)).toEqual(["a"]);
    expect(newestFirst(book).map(({ id }) => id)).toEqual(["b", "a"]);
  });

  it("does not make a loop that is under way meet a case twice", () => {
    const book = casebookOf([received("a", "2024-01-01"), received("b", "2024-02-01")]);
    const met: string[] = [];
    for (const kase of book.cases.values()) {
      met.push(kase.id);
      if (met.length < 5) putCase(book, received("a", "2024-03-01"));
    }
    expect(met).toEqual(["a", "b"]);
  });
});
