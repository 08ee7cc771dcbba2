import { describe, expect, it } from "vitest";
import { advanceImport, readyRows } from "@/lib/exchange/import/advanceImport";
import { longestTable } from "@/lib/exchange/import/longestTable";
import { readSentImport } from "@/lib/exchange/import/sentImport";
import { smallReader, today } from "../importing";

const ground = { reader: smallReader, cases: new Map(), today };
const text =
  "Horn,In,Out,Problem,Cause,Result,Minutes\ncnt,2019-04-03,2019-04-05,sticks,gummed oil,fixed,45\nkazoo,,,,,,";
const file = (bytes: string | Uint8Array<ArrayBuffer>, name = "jobs.csv") => new File([bytes], name);
const held = { name: "jobs.csv", text, encoding: "UTF-8" };
const advance = async (entries: Record<string, unknown>, before?: unknown) =>
  advanceImport(await readSentImport(Object.entries(entries), before), ground);

describe("a table on its way in", () => {
  it("is read, its columns guessed and shown with a cell each, and nothing planned yet", async () => {
    const draft = await advance({ wish: "read", file: file(text) });
    expect(draft).toMatchObject({ fault: "", rowCount: 2, separator: ",", source: held, plan: undefined });
    expect(draft.columns[0]).toEqual({ heading: "Horn", sample: "cnt", field: "instrument" });
  });

  it("is tried with the columns as they were matched, from what the page holds", async () => {
    const matched = {
      "column.0": "instrument",
      "column.1": "received",
      "column.2": "closed",
      "column.3": "complaint",
      "column.4": "cause",
      "column.5": "outcome",
      "column.6": "minutes",
    };
    const draft = await advance({ wish: "try", ...matched }, held);
    expect(draft.plan).toMatchObject({ readyCount: 1, refusedCount: 1 });
    expect(draft.plan?.leftRows).toBe("Horn,In,Out,Problem,Cause,Result,Minutes\nkazoo,,,,,,\n");
    const without = await advance({ wish: "try", ...matched, "column.0": "" }, held);
    expect(without.columns[0]?.field).toBeUndefined();
    expect(without.plan).toMatchObject({ readyCount: 0, refusedCount: 2 });
  });

  it("gives its rows with their case files when it is to be taken in", async () => {
    const rows = readyRows(await readSentImport(Object.entries({ wish: "take" }), held), ground);
    expect(rows).toMatchObject([{ line: 2, id: "19-001" }]);
    expect(rows[0]?.text).toContain("instrument: cornet");
  });

  it("that is pasted is read too, and a file goes before it", async () => {
    expect((await advance({ wish: "read", pasted: text, file: file("") })).source?.name).toBe(
      "what was pasted",
    );
    expect((await advance({ wish: "read", pasted: "a\n1", file: file(text) })).source?.name).toBe("jobs.csv");
  });

  it("is refused in words where nothing was chosen, for no text, for too much of it, for a broken table", async () => {
    expect((await advance({ wish: "read" })).fault).toContain("Nothing was chosen");
    expect((await advance({ wish: "read", file: file(new Uint8Array([80, 75, 3, 4, 0])) })).fault).toContain(
      "no text",
    );
    expect((await advance({ wish: "read", file: file("a".repeat(longestTable + 1)) })).fault).toContain(
      "longer than 3 million",
    );
    expect((await advance({ wish: "read", pasted: "a".repeat(longestTable + 1) })).fault).toContain(
      "longer than",
    );
    expect((await advance({ wish: "read", pasted: 'a\n"b' })).fault).toContain("a quote that is not closed");
  });

  it("with too many rows at fault to send to and fro names the first, and leaves their table to the file", async () => {
    const rows = "kazoo,it is a long complaint about a kazoo\n".repeat(15_000);
    const draft = await advance({ wish: "try" }, { ...held, text: `Horn,Problem\n${rows}` });
    expect(draft.plan).toMatchObject({ refusedCount: 15_000, leftRows: "" });
    expect(draft.plan?.refused).toHaveLength(100);
  });

  it("is not taken from a page that sends something else back", async () => {
    for (const other of [
      null,
      7,
      { name: "x" },
      { ...held, text: 5 },
      { ...held, text: "a".repeat(longestTable + 1) },
    ])
      expect((await advance({ wish: "try" }, other)).source).toBeUndefined();
  });
});
