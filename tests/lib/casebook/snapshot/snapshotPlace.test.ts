import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { snapshotPlace } from "@/lib/casebook/snapshot/snapshotPlace";

const foldersOf = (content: string) => ({
  content,
  vocabulary: join(content, "vocabulary"),
  cases: join(content, "cases"),
});
const pathFor = (content: string, environment: Record<string, string> = {}) =>
  snapshotPlace(foldersOf(content), environment, { nowMs: 5, mark: "m" })?.path;

describe("the place of a snapshot", () => {
  it("is in .benchlore beside the content, not in it", () => {
    expect(pathFor("/shop/content")).toMatch(/^\/shop\/\.benchlore\/cases-[0-9a-f]{16}\.ndjson$/);
  });

  it("is in the folder that BENCHLORE_CACHE names", () => {
    expect(pathFor("/shop/content", { BENCHLORE_CACHE: "/var/quick" })).toMatch(/^\/var\/quick\/cases-/);
  });

  it("is another for every casebook, and always the same for one", () => {
    const environment = { BENCHLORE_CACHE: "/var/quick" };
    expect(pathFor("/a/content", environment)).not.toBe(pathFor("/b/content", environment));
    expect(pathFor("/a/content", environment)).toBe(pathFor("/a/content", environment));
  });

  it("is nowhere for BENCHLORE_CACHE=none", () => {
    expect(pathFor("/shop/content", { BENCHLORE_CACHE: "none" })).toBeUndefined();
  });

  it("brings the clock and the mark with it", () => {
    expect(snapshotPlace(foldersOf("/a"), {}, { nowMs: 5, mark: "m" })).toMatchObject({
      nowMs: 5,
      mark: "m",
    });
  });
});
