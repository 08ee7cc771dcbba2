import { expect, it } from "vitest";
import { lessonStandings } from "@/lib/casebook/lessonStandings";
import { makeCase } from "@/tests/fixtures/makeCase";

it("a lesson's standing counts finished jobs that said it held or failed, and none that is open or speaks of itself", () => {
  const said = (id: string, status: string, past: string, lesson?: string) =>
    makeCase({ id, status, like: [{ case: past, ...(lesson ? { lesson } : {}) }] });
  const standings = lessonStandings([
    said("b", "closed", "a", "held"),
    said("c", "closed", "a", "failed"),
    said("d", "closed", "a", "held"),
    said("e", "open", "a", "failed"),
    said("f", "closed", "b"),
    said("g", "closed", "g", "held"),
  ]);
  expect([...standings]).toEqual([["a", { held: ["b", "d"], failed: ["c"] }]]);
});
