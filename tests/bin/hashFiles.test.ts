import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashFiles } from "../../bin/setup/hashFiles.mjs";

let root = "";
const paths = ["app", "lib", "proxy.ts", "missing.ts"];
const put = (path: string, text: string) => writeFileSync(join(root, path), text);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "benchlore-hash-"));
  mkdirSync(join(root, "app/deep"), { recursive: true });
  mkdirSync(join(root, "lib"));
  put("app/deep/page.tsx", "one");
  put("app/layout.tsx", "two");
  put("lib/a.ts", "three");
  put("proxy.ts", "four");
});

afterEach(() => rmSync(root, { recursive: true }));

describe("hashFiles", () => {
  it("does not depend on the order or the doubling of paths", () => {
    expect(hashFiles(root, [...paths].reverse())).toBe(hashFiles(root, paths));
    expect(hashFiles(root, [...paths, "app/deep"])).toBe(hashFiles(root, paths));
  });

  it("does not change when a file is written again with the same bytes", () => {
    const before = hashFiles(root, paths);
    put("app/layout.tsx", "two");
    expect(hashFiles(root, paths)).toBe(before);
  });

  it("ignores what lies outside the paths", () => {
    const before = hashFiles(root, paths);
    put("README.md", "new");
    expect(hashFiles(root, paths)).toBe(before);
  });

  it.each([
    ["a byte changes deep in a folder", () => put("app/deep/page.tsx", "onf")],
    ["a file is added, even an empty one", () => put("app/deep/empty.ts", "")],
    ["a file is taken away", () => rmSync(join(root, "lib/a.ts"))],
    ["a file is renamed", () => renameSync(join(root, "lib/a.ts"), join(root, "lib/b.ts"))],
    ["a missing file appears", () => put("missing.ts", "")],
    [
      "bytes move from the end of one file to the start of the next",
      () => {
        put("app/deep/page.tsx", "on");
        put("app/layout.tsx", "etwo");
      },
    ],
  ])("changes when %s", (_, change) => {
    const before = hashFiles(root, paths);
    change();
    expect(hashFiles(root, paths)).not.toBe(before);
  });
});
