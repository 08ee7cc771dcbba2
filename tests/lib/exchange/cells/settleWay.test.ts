import { describe, expect, it } from "vitest";
import { type DayOrder, dayOrders, dayReadings } from "@/lib/exchange/cells/dayReadings";
import { readSettled, settleWay } from "@/lib/exchange/cells/settleWay";

const cells = (...texts: readonly string[]) =>
  texts.map((text, at) => ({ line: at + 2, text, readings: dayReadings(text, "2026-11-25") }));
const settle = (texts: readonly string[], said?: DayOrder) => settleWay(cells(...texts), dayOrders, said);

describe("how the dates of a file are written", () => {
  it("is proven by the one that can be nothing else", () => {
    expect(settle(["03/04/2021", "23/04/2021", "05/06/2021"])).toEqual({
      kind: "proven",
      way: "dmy",
      line: 3,
      text: "23/04/2021",
    });
  });

  it("is open where nothing tells, also where three years in two digits would do", () => {
    expect(settle(["03/04/2021", "05/06/2021"]).kind).toBe("open");
    expect(settle(["23/04/21"]).kind).toBe("open");
  });

  it("is mixed where two dates tell different ways", () => {
    expect(settle(["23/04/2021", "04/23/2021"])).toEqual({ kind: "mixed", line: 3, text: "04/23/2021" });
  });

  it("does not matter where every date leaves no choice, and is as somebody said", () => {
    expect(settle(["2021-04-03", "3 May 2021", "rubbish"]).kind).toBe("needless");
    expect(settle(["03/04/2021"], "mdy")).toEqual({ kind: "said", way: "mdy" });
  });

  it("decides what a date says; an undecided one is not guessed", () => {
    const [two, one] = cells("03/04/2021", "23/04/2021").map(({ readings }) => readings);
    if (!two || !one) throw new Error("both cells must be there");
    expect(readSettled(two, { kind: "open" })).toBeUndefined();
    expect(readSettled(one, { kind: "open" })).toBe("2021-04-23");
    expect(readSettled(two, { kind: "said", way: "mdy" })).toBe("2021-03-04");
    expect(readSettled(one, { kind: "said", way: "mdy" })).toBeUndefined();
  });
});
