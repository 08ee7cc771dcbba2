import { describe, expect, it } from "vitest";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { ask, asked, closing, fresh, ground, id, read } from "./sheetAsked";

describe("a plan", () => {
  const planned = asked(fresh, { wish: "plan", repair: "ease-casing casing-dented" });

  it("takes a repair on the part that is in trouble, with the cause that it is for, and lets it go again", () => {
    expect(read(planned).case?.plan).toEqual([
      { repair: "ease-casing", part: "valve 3", for: "casing-dented" },
    ]);
    expect(asked(planned, { wish: "unplan", at: "0" })).toBe(fresh);
    expect(ask(fresh, { wish: "plan", repair: "" }).problems[0]?.field).toBe("plan");
  });

  it("keeps which checks were seen beside a repair and which were ticked, also that none was", () => {
    const list = (ticked: readonly string[]) => [
      ["wish", "look"],
      ["sheet", id],
      ["base", planned],
      ["at", "0"],
      ["seen", "valve-travel"],
      ["seen", "which-way"],
      ...ticked.map((one) => ["ticked", one]),
    ];
    const looked = (ticked: readonly string[]) => {
      const entries = list(ticked).map(([name = "", value = ""]): [string, string] => [name, value]);
      return read(changeSheet(readSentSheet(entries), ground).text ?? "").case?.plan?.[0];
    };
    expect(looked(["which-way"])).toMatchObject({
      seen: ["valve-travel", "which-way"],
      ticked: ["which-way"],
    });
    expect(looked([])).toMatchObject({ seen: ["valve-travel", "which-way"], ticked: [] });
  });

  it("is taken over from a past case: what helped there, on this job's part, once", () => {
    const taken = asked(fresh, { wish: "take-over", from: "24-009" });
    expect(read(taken).case?.plan).toEqual([
      { repair: "ease-casing", part: "valve 3", for: "casing-dented", from: "24-009" },
    ]);
    expect(ask(taken, { wish: "take-over", from: "24-009" }).problems).toHaveLength(1);
    expect(ask(fresh, { wish: "take-over", from: "99-999" }).problems[0]?.received).toBe("no case '99-999'");
  });

  it("asks for its proofs beforehand, but lets a job be closed without what was not done", () => {
    const job = read(planned).case;
    expect(job && listProofs(job, smallVocabulary)).toMatchObject([{ standing: "planned" }]);
    const other = { wish: "log", "step.0.what": "repair clean-and-oil", "step.0.found": "fixed" };
    const closed = asked(asked(planned, other), closing, ["valve-travel free"]);
    expect(read(closed).case).toMatchObject({ status: "closed" });
  });
});
