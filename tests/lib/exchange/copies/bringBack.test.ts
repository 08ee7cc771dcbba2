import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { bringBack } from "@/lib/exchange/copies/bringBack";
import { mostSentBytes } from "@/lib/safety/mostSentBytes";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { rawZip } from "@/tests/fixtures/rawZip";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const file = (id: string, text: string) => ({ name: `cases/${id}.md`, bytes: Buffer.from(text) });
const second = change(goodCase, "24-001", "24-002");
const zip = rawZip([file("24-001", goodCase), file("24-002", second), file("24-003", goodCase)]);
const asFile = (bytes: Uint8Array) => new File([new Uint8Array(bytes)], "copy.zip");

function casebookOf(cases: Readonly<Record<string, string>>) {
  const content = temporaryFolder();
  mkdirSync(join(content, "cases"));
  for (const [id, text] of Object.entries(cases)) writeFileSync(join(content, "cases", `${id}.md`), text);
  return content;
}
function send(content: string, entries: Readonly<Record<string, unknown>>, onSaved?: (kase: Case) => void) {
  const folders = contentFolders({ BENCHLORE_CONTENT: content }, () => false);
  const casebook = loadCasebook(folders.cases, smallVocabulary);
  return bringBack(Object.entries(entries), {
    folders,
    casebook,
    vocabulary: smallVocabulary,
    mark: "a",
    ...(onSaved ? { onSaved } : {}),
  });
}
const casesIn = (content: string) => readdirSync(join(content, "cases")).sort();

describe("a zip that is brought back", () => {
  const washed = change(goodCase, "It was washed", "It was soaked");

  it("is looked at first: what is new, the same, different, and at fault; nothing is written", async () => {
    const content = casebookOf({ "24-001": washed, "24-002": second });
    const { fault, found } = await send(content, { zip: asFile(zip), wish: "look" });
    expect(fault).toBe("");
    expect(found).toMatchObject({ name: "copy.zip", written: false });
    expect(found?.report).toMatchObject({
      fresh: [],
      same: ["cases/24-002.md"],
      differing: [{ path: "cases/24-001.md", found: "'24-001', which another case has" }],
      refused: [{ path: "cases/24-003.md", where: "cases/24-003.md id", found: "'24-001'" }],
    });
    expect(casesIn(content)).toEqual(["24-001.md", "24-002.md"]);
  });

  it("is taken in once it was looked at, and what differs stays as it was", async () => {
    const content = casebookOf({ "24-001": washed });
    const looked = await send(content, { zip: asFile(zip), wish: "look" });
    const saved: string[] = [];
    const taken = await send(
      content,
      { zip: asFile(zip), wish: "take", seen: looked.found?.hash },
      ({ id }) => saved.push(id),
    );
    expect(taken).toMatchObject({
      fault: "",
      found: { written: true, report: { fresh: ["cases/24-002.md"] } },
    });
    expect(saved).toEqual(["24-002"]);
    expect(casesIn(content)).toEqual(["24-001.md", "24-002.md"]);
    expect(readFileSync(join(content, "cases", "24-001.md"), "utf8")).toBe(washed);
    const again = await send(content, { zip: asFile(zip), wish: "look" });
    expect(again.found?.report).toMatchObject({ fresh: [], same: ["cases/24-002.md"] });
  });

  it("is not taken in where another one was looked at", async () => {
    const content = casebookOf({});
    const looked = await send(content, { zip: asFile(zip), wish: "look" });
    const other = asFile(rawZip([file("24-002", second)]));
    for (const seen of [looked.found?.hash, "", undefined]) {
      const { fault, found } = await send(content, { zip: other, wish: "take", seen });
      expect(fault).toContain("another zip");
      expect(found).toMatchObject({ written: false, report: { fresh: ["cases/24-002.md"] } });
    }
    expect(casesIn(content)).toEqual([]);
  });

  it("is refused as a whole, in words, where it is none, holds a bad name or is missing", async () => {
    const content = casebookOf({});
    const fault = async (sent: unknown) => (await send(content, { zip: sent, wish: "look" })).fault;
    expect(await fault(asFile(Buffer.from("a,b\n1,2\n")))).toContain("no zip");
    expect(await fault(asFile(rawZip([{ name: "../cases/24-001.md" }])))).toContain(
      "leads out of the casebook",
    );
    expect(await fault(new File([], ""))).toContain("Nothing was chosen");
    expect((await send(content, { wish: "take" })).fault).toContain("once more");
    expect(await fault(asFile(new Uint8Array(mostSentBytes + 1)))).toContain("60 MB");
    expect(existsSync(join(content, "..", "cases"))).toBe(false);
    expect(casesIn(content)).toEqual([]);
  });
});
