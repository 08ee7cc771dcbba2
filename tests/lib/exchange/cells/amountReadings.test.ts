import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountReadings } from "@/lib/exchange/cells/amountReadings";
import { minuteReadings } from "@/lib/exchange/cells/minuteReadings";
import { writtenAmount } from "@/lib/exchange/cells/writtenAmount";

const read = (text: string) => Object.fromEntries(amountReadings(text));
const both = (value: number) => ({ point: value, comma: value });

describe("a number", () => {
  it.each([
    ["1.234,50", { comma: 1234.5 }],
    ["1,234.50", { point: 1234.5 }],
    ["1.234.567", { comma: 1234567 }],
    ["1,250", { point: 1250, comma: 1.25 }],
    ["1.250", { point: 1.25, comma: 1250 }],
    ["12,5", { comma: 12.5 }],
    ["12.5", { point: 12.5 }],
    ["0.250", { point: 0.25 }],
    ["45", both(45)],
    ["1 234,50", { comma: 1234.5 }],
    ["1'234.50", { point: 1234.5 }],
    ["€ 48,50", { comma: 48.5 }],
    ["$48.50", { point: 48.5 }],
    ["48.50 EUR", { point: 48.5 }],
    ["48,-", both(48)],
  ])("%s is read in the ways that it can be meant", (text, values) => {
    expect(read(text)).toEqual(values);
  });

  it.each(["", "-5", "1,2,3", "1.2.3", "ten", "4 5", "1e3", "12,34.5"])("is not read from '%s'", (text) => {
    expect(read(text)).toEqual({});
  });

  it("that was written for a table is read back as it was and as nothing else", () => {
    const amount = fc.oneof(
      fc.nat({ max: 1_000_000 }),
      fc.nat({ max: 100_000_000 }).map((hundredths) => hundredths / 1000),
    );
    fc.assert(
      fc.property(amount, (value) => {
        const values = [...amountReadings(writtenAmount(value)).values()];
        expect(values.length).toBeGreaterThan(0);
        for (const one of values) expect(one).toBe(value);
      }),
    );
    expect(writtenAmount(undefined)).toBe("");
    expect(writtenAmount(1e-7)).toBe("0.0000001000");
  });
});

describe("a time spent", () => {
  it.each([
    ["45", both(45)],
    ["45 min", both(45)],
    ["1:20", both(80)],
    ["1 h 20 min", both(80)],
    ["1h20", both(80)],
    ["1.5 h", { point: 90 }],
    ["1,5h", { comma: 90 }],
    ["2 hours", both(120)],
  ])("%s is so many minutes", (text, values) => {
    expect(Object.fromEntries(minuteReadings(text, "minutes"))).toEqual(values);
  });

  it("without a unit is in that of its column", () => {
    expect(Object.fromEntries(minuteReadings("1.5", "hours"))).toEqual({ point: 90 });
    expect(Object.fromEntries(minuteReadings("90 min", "hours"))).toEqual(both(90));
  });

  it.each(["1:75", "a while", "", "h"])("is not read from '%s'", (text) => {
    expect(minuteReadings(text, "minutes").size).toBe(0);
  });
});
