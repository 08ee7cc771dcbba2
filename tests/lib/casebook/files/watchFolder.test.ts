import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { watchFolder } from "@/lib/casebook/files/watchFolder";

const root = mkdtempSync(join(tmpdir(), "benchlore-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** A folder that is watched, with what was told of it. */
function watched(name: string) {
  const folder = join(root, name);
  const told = new Set<string>();
  const start = () => watchFolder(folder, (path) => told.add(path));
  const isTold = (path: string) => expect.poll(() => told.has(path), { timeout: 8000 }).toBe(true);
  return { folder, told, start, isTold };
}

describe("a watched folder", { timeout: 30_000 }, () => {
  it("tells of what comes, changes and goes, by its path", async () => {
    const { folder, told, start, isTold } = watched("changes");
    mkdirSync(folder);
    const file = join(folder, "a.md");
    start();
    for (const change of [
      () => writeFileSync(file, "1"),
      () => writeFileSync(file, "2"),
      () => rmSync(file),
    ]) {
      told.clear();
      change();
      await isTold(file);
    }
  });

  it("is watched from the moment it is there", async () => {
    const { folder, start, isTold } = watched("late");
    start();
    mkdirSync(folder);
    await isTold(folder);
    writeFileSync(join(folder, "a.md"), "1");
    await isTold(join(folder, "a.md"));
  });

  it("is watched on when another is put in its place", async () => {
    const { folder, told, start, isTold } = watched("swapped");
    mkdirSync(folder);
    start();
    renameSync(folder, join(root, "old"));
    mkdirSync(folder);
    await isTold(folder);
    await expect
      .poll(
        () => {
          writeFileSync(join(folder, "a.md"), "1");
          return told.has(join(folder, "a.md"));
        },
        { timeout: 8000 },
      )
      .toBe(true);
  });
});
