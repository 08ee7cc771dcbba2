import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayReadings } from "@/lib/exchange/cells/dayReadings";

const today = "2026-11-25";
const read = (text: string) => Object.fromEntries(dayReadings(text, today));
const only = (day: string) => ({ dmy: day, mdy: day, ymd: day });

describe("a date", () => {
  it.each([
    ["2021-04-03", "2021-04-03"],
    ["2021/4/3", "2021-04-03"],
    ["20210403", "2021-04-03"],
    ["2021-04-03T14:22:00Z", "2021-04-03"],
    ["2021-04-03 14:22", "2021-04-03"],
    ["3 April 2021", "2021-04-03"],
    ["3-Apr-21", "2021-04-03"],
    ["Apr. 3rd, 2021", "2021-04-03"],
    ["sept 9 1998", "1998-09-09"],
    ["3 Apr 98", "1998-04-03"],
  ])("%s is %s whatever order is meant", (text, day) => {
    expect(read(text)).toEqual(only(day));
  });

  it("of two small numbers and a year can be two days", () => {
    expect(read("03/04/2021")).toEqual({ dmy: "2021-04-03", mdy: "2021-03-04" });
    expect(read("3.4.2021")).toEqual({ dmy: "2021-04-03", mdy: "2021-03-04" });
  });

  it("with a number over twelve can be one", () => {
    expect(read("23.04.2021")).toEqual({ dmy: "2021-04-23" });
    expect(read("04-23-2021")).toEqual({ mdy: "2021-04-23" });
  });

  it("with a year in two digits can be three days", () => {
    expect(read("03/04/21")).toEqual({ dmy: "2021-04-03", mdy: "2021-03-04", ymd: "2003-04-21" });
    expect(read("31/12/98")).toEqual({ dmy: "1998-12-31" });
  });

  it.each([
    "31.02.2021",
    "2021-13-01",
    "2021-02-29",
    "soon",
    "",
    "44289",
    "3",
    "1/2",
    "32 May 2020",
    "3 Mai 2020",
    "3 Mayb 2020",
  ])("is not read from '%s'", (text) => {
    expect(read(text)).toEqual({});
  });

  it("of any day of the last century and this is read back from every way of writing it", () => {
    const day = fc
      .date({ min: new Date("1930-01-01"), max: new Date("2026-11-25"), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(day, (written) => {
        const [year, month, date] = written.split("-");
        expect(read(`${date}/${month}/${year}`).dmy).toBe(written);
        expect(read(`${month}.${date}.${year}`).mdy).toBe(written);
        expect(read(written)).toEqual(only(written));
      }),
    );
  });
});
