import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { formatStamp } from "@/lib/casebook/snapshot/formatStamp";
import { readSnapshot } from "@/lib/casebook/snapshot/readSnapshot";
import type { Snapshot } from "@/lib/casebook/snapshot/snapshot";
import { writeSnapshot } from "@/lib/casebook/snapshot/writeSnapshot";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const textOf = (id: string, title = "Third valve hangs when warm") =>
  change(change(goodCase, "id: 24-001", `id: ${id}`), "Third valve hangs when warm", title);
const idOf = (at: number) => `24-${String(at).padStart(3, "0")}`;

/** Long after any file was written, so that its time is to be trusted. */
const later = () => Date.now() + 60_000;

/** A folder of cases, enough for a snapshot to pay, and a place for it. */
function shopOf(count = 260) {
  const folder = join(temporaryFolder(), "cases");
  mkdirSync(folder);
  for (let at = 1; at <= count; at += 1) writeFileSync(join(folder, `${idOf(at)}.md`), textOf(idOf(at)));
  const path = join(dirname(folder), "cache", "cases.ndjson");
  return {
    folder,
    path,
    file: (at: number) => join(folder, `${idOf(at)}.md`),
    load: (vocabulary = smallVocabulary) =>
      loadCasebook(folder, vocabulary, { path, nowMs: later(), mark: "a", worthWriting: 250 }),
    plain: (vocabulary = smallVocabulary) => loadCasebook(folder, vocabulary),
  };
}
type Shop = ReturnType<typeof shopOf>;

function snapshotOf({ path }: Shop): Snapshot {
  const snapshot = readSnapshot(path, formatStamp());
  if (!snapshot) throw new Error("the snapshot must be there; got none; mend the test");
  return snapshot;
}

/** All entries with their cases parsed. */
const plainly = ({ entries }: Pick<Snapshot, "entries">) =>
  [...entries].map(([file, { case: kase, ...rest }]) => [file, { ...rest, case: kase.value }]);

/** Writes into the snapshot, soundly sealed, that cases have other titles than their files say. */
function forge(shop: Shop, isForged: (at: number) => boolean, takenMs = later()) {
  const { head, entries } = snapshotOf(shop);
  const forged = [...entries].map(([file, entry], at) => {
    const kase = entry.case.value;
    const value: Case = isForged(at) ? { ...kase, title: "Out of the snapshot" } : kase;
    return [file, { ...entry, case: { value } }] as const;
  });
  writeSnapshot(
    { path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 },
    { ...head, takenMs },
    new Map(forged),
  );
}
/** Of 260 entries every eleventh is held against its file. */
const unsampled = 5;
const titleOf = (shop: Shop, at: number) => shop.load().cases.get(idOf(at))?.title;

describe("a casebook loaded with a snapshot", () => {
  it("is the same as without one, at the first loading and at the next, unknown fields and story included", () => {
    const shop = shopOf();
    writeFileSync(
      shop.file(3),
      change(textOf(idOf(3)), "status:", "own: { a: [1, ~, yes], b: .5 }\nstatus:"),
    );
    writeFileSync(shop.file(4), "no case at all\n");
    writeFileSync(join(shop.folder, "a-twin.md"), textOf(idOf(7)));
    const plain = shop.plain();
    for (const loaded of [shop.load(), shop.load()]) {
      expect([...loaded.cases]).toStrictEqual([...plain.cases]);
      expect(loaded.problems).toEqual(plain.problems);
    }
    expect(snapshotOf(shop).entries.size).toBe(260);
  });

  it("does not parse what has not changed", () => {
    const shop = shopOf();
    shop.load();
    forge(shop, (at) => at === unsampled);
    expect(titleOf(shop, unsampled + 1)).toBe("Out of the snapshot");
    expect(titleOf(shop, unsampled + 2)).toBe("Third valve hangs when warm");
  });

  it("makes a case out of the snapshot only when somebody asks for it", () => {
    const shop = shopOf();
    shop.load();
    const parse = vi.spyOn(JSON, "parse");
    const casesMade = () => parse.mock.calls.filter(([text]) => text.startsWith('{"id":')).length;
    try {
      const { cases } = shop.load();
      expect([...cases.keys()]).toHaveLength(260);
      const samples = casesMade();
      expect(samples).toBeLessThan(30);
      for (let asked = 1; asked <= 2; asked += 1) cases.get(idOf(unsampled + 1));
      expect(casesMade()).toBe(samples + 1);
    } finally {
      parse.mockRestore();
    }
    expect([...shop.load().cases]).toStrictEqual([...shop.plain().cases]);
  });

  it("does not parse a file that was touched but has the same bytes, as after a copy of the folder", () => {
    const shop = shopOf();
    shop.load();
    forge(shop, (at) => at === unsampled);
    utimesSync(shop.file(unsampled + 1), 1_000_000, 1_000_000);
    expect(titleOf(shop, unsampled + 1)).toBe("Out of the snapshot");
  });

  it("sees a change that left the file's size and time as they were", () => {
    const shop = shopOf();
    shop.load();
    const { mtime, atime } = statSync(shop.file(9));
    writeFileSync(shop.file(9), textOf(idOf(9), "Third valve hangs when cold"));
    utimesSync(shop.file(9), atime, mtime);
    expect(titleOf(shop, 9)).toBe("Third valve hangs when cold");
  });

  it("looks at the bytes of a file that was written shortly before the snapshot was taken", () => {
    const shop = shopOf();
    shop.load();
    const { head, entries } = snapshotOf(shop);
    const stale = [...entries].map(([file, entry], at) =>
      at === unsampled
        ? ([
            file,
            { ...entry, hash: "of other bytes", case: { value: { ...entry.case.value, title: "Stale" } } },
          ] as const)
        : ([file, entry] as const),
    );
    const write = (takenMs: number) =>
      writeSnapshot(
        { path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 },
        { ...head, takenMs },
        new Map(stale),
      );
    write(later());
    expect(titleOf(shop, unsampled + 1)).toBe("Stale");
    write(statSync(shop.file(unsampled + 1)).mtimeMs + 1500);
    expect(titleOf(shop, unsampled + 1)).toBe("Third valve hangs when warm");
  });

  it("follows files that came, went or were named otherwise", () => {
    const shop = shopOf();
    shop.load();
    rmSync(shop.file(1));
    writeFileSync(join(shop.folder, "25-001.md"), textOf("25-001"));
    writeFileSync(join(shop.folder, "24-002-other.md"), readFileSync(shop.file(2)));
    rmSync(shop.file(2));
    const { cases } = shop.load();
    expect([...cases]).toStrictEqual([...shop.plain().cases]);
    expect(cases.get("24-002")?.file).toBe("24-002-other.md");
    expect(cases.has("24-001")).toBe(false);
  });

  it("says of a case that a changed vocabulary no longer bears what is wrong, with its line, and keeps the others", () => {
    const shop = shopOf();
    writeFileSync(shop.file(5), change(textOf(idOf(5)), "cause: gummed-oil", "cause: casing-dented"));
    shop.load();
    forge(shop, (at) => at === unsampled);
    const causes = new Map([...smallVocabulary.causes].filter(([id]) => id !== "casing-dented"));
    const { cases, problems } = shop.load({ ...smallVocabulary, causes });
    expect(problems).toEqual(shop.plain({ ...smallVocabulary, causes }).problems);
    expect(problems).toMatchObject([{ file: "24-005.md", line: 13, field: "causes.0.cause" }]);
    expect(cases.get(idOf(unsampled + 1))?.title).toBe("Out of the snapshot");
  });

  it("finds a case sound again when the vocabulary bears it again", () => {
    const shop = shopOf();
    writeFileSync(shop.file(5), change(textOf(idOf(5)), "cause: gummed-oil", "cause: casing-dented"));
    shop.load({ ...smallVocabulary, causes: new Map([...smallVocabulary.causes].slice(0, 1)) });
    expect(shop.load().cases.has(idOf(5))).toBe(true);
  });

  it("reads a case anew each time whose numbers JSON does not hold", () => {
    const shop = shopOf();
    writeFileSync(shop.file(3), change(textOf(idOf(3)), "status:", "a: .inf\nb: -0\nc: .nan\nstatus:"));
    shop.load();
    expect(snapshotOf(shop).entries.has("24-003.md")).toBe(false);
    expect(shop.load().cases.get("24-003")).toMatchObject({
      a: Number.POSITIVE_INFINITY,
      b: -0,
      c: Number.NaN,
    });
  });
});

describe("a snapshot", () => {
  it("is not written for a few files, nor again for a few changes", () => {
    const few = shopOf(20);
    few.load();
    expect(statSync(few.path, { throwIfNoEntry: false })).toBeUndefined();
    const shop = shopOf();
    shop.load();
    const before = readFileSync(shop.path);
    writeFileSync(shop.file(9), textOf(idOf(9), "Changed"));
    shop.load();
    expect(readFileSync(shop.path).equals(before)).toBe(true);
  });

  it("is thrown away where files now mean something else than when it was written", () => {
    const shop = shopOf();
    shop.load();
    forge(shop, () => true);
    expect([...shop.load().cases]).toStrictEqual([...shop.plain().cases]);
    expect(snapshotOf(shop).entries.get("24-001.md")?.case.value.title).toBe("Third valve hangs when warm");
  });

  it("is thrown away where a file of which it has a case is now at fault by the same vocabulary", () => {
    const shop = shopOf();
    const flawed = change(textOf(idOf(1)), "cause: gummed-oil", "cause: gummed-oli");
    writeFileSync(shop.file(1), flawed);
    shop.load();
    const { head, entries } = snapshotOf(shop);
    const [, sound] = [...entries][0] ?? [];
    if (!sound) throw new Error("an entry must be there; got none; mend the test");
    const hash = createHash("sha256").update(flawed).digest("hex");
    const trusting = new Map([["24-001.md", { ...sound, hash, status: statSync(shop.file(1)) }], ...entries]);
    writeSnapshot({ path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 }, head, trusting);
    const { cases, problems } = shop.load();
    expect(problems).toEqual(shop.plain().problems);
    expect(problems).toHaveLength(1);
    expect([...cases]).toStrictEqual([...shop.plain().cases]);
  });

  it("is thrown away when it is of another format", () => {
    const shop = shopOf();
    shop.load();
    expect(readSnapshot(shop.path, "0-other")).toBeUndefined();
    const { head, entries } = snapshotOf(shop);
    writeSnapshot(
      { path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 },
      { ...head, format: "0-other" },
      entries,
    );
    expect([...shop.load().cases]).toStrictEqual([...shop.plain().cases]);
    expect(snapshotOf(shop).head.format).toBe(formatStamp());
  });

  it("is thrown away wherever it was cut short, a bit of it was turned over, or something was added", () => {
    const shop = shopOf();
    shop.load();
    const { head, entries } = snapshotOf(shop);
    const small = new Map([...entries].slice(0, 3));
    writeSnapshot({ path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 }, head, small);
    const sound = readFileSync(shop.path);
    expect(plainly(snapshotOf(shop))).toStrictEqual(plainly({ entries: small }));
    const isTrusted = (bytes: Uint8Array) => {
      writeFileSync(shop.path, bytes);
      return readSnapshot(shop.path, formatStamp()) !== undefined;
    };
    const flips = fc.tuple(fc.nat({ max: sound.length - 1 }), fc.nat({ max: 7 }));
    fc.assert(
      fc.property(flips, ([at, bit]) => {
        const flipped = Uint8Array.from(sound);
        flipped[at] = (flipped[at] ?? 0) ^ (1 << bit);
        expect(isTrusted(flipped)).toBe(false);
        expect(isTrusted(sound.subarray(0, at))).toBe(false);
      }),
      { numRuns: 300, examples: [[[0, 0]], [[sound.length - 2, 0]], [[sound.length - 1, 0]]] },
    );
    expect(isTrusted(Buffer.concat([sound, Buffer.from("{}\n")]))).toBe(false);
    expect(isTrusted(Buffer.concat([sound, sound]))).toBe(false);
    expect(isTrusted(Buffer.alloc(0))).toBe(false);
    expect(isTrusted(sound)).toBe(true);
  });

  it("is gone without a word where it cannot be written or read", () => {
    const shop = shopOf();
    writeFileSync(dirname(shop.path), "a file where the folder should be");
    expect([...shop.load().cases]).toStrictEqual([...shop.plain().cases]);
    const other = shopOf();
    mkdirSync(other.path, { recursive: true });
    expect([...other.load().cases]).toStrictEqual([...other.plain().cases]);
    expect(readdirSync(dirname(other.path))).toEqual(["cases.ndjson"]);
  });

  it("leaves nothing half written behind, and clears away what a killed program left", () => {
    const shop = shopOf();
    const cache = dirname(shop.path);
    mkdirSync(cache);
    for (const name of ["cases.ndjson.old.half", "cases.ndjson.young.half"])
      writeFileSync(join(cache, name), "");
    utimesSync(join(cache, "cases.ndjson.old.half"), 1_000_000, 1_000_000);
    shop.load();
    expect(readdirSync(cache).sort()).toEqual(["cases.ndjson", "cases.ndjson.young.half"]);
  });

  it("is read back whole however long its lines are", () => {
    const shop = shopOf();
    shop.load();
    const { head, entries } = snapshotOf(shop);
    const long = [...entries].slice(0, 40).map(([file, entry], at) => {
      const value: Case = { ...entry.case.value, story: "Größe ½ ".repeat(at * 4000) };
      return [file, { ...entry, case: { value } }] as const;
    });
    writeSnapshot({ path: shop.path, nowMs: 0, mark: "b", worthWriting: 0 }, head, new Map(long));
    expect(statSync(shop.path).size).toBeGreaterThan(20_000_000);
    expect(plainly(snapshotOf(shop))).toStrictEqual(plainly({ entries: new Map(long) }));
  });
});
