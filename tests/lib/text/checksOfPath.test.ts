import { describe, expect, it } from "vitest";
import { stepSchema } from "@/lib/casebook/step";
import { checksOfPath } from "@/lib/text/checksOfPath";
import { checkSchema } from "@/lib/vocabulary/check";

const reading = ["place", "way", "swap", "reduction", "clearance", "ovality"] as const;
const checks = new Map(
  [undefined, ...reading].map((reads) => {
    const id = reads === undefined ? "by-hand" : `reads-${reads}`;
    const check = checkSchema.parse({
      id,
      label: id,
      question: "What is it?",
      families: ["brass"],
      parts: ["valve"],
      risk: 1,
      minutes: 1,
      how: "A few plain words that are long enough to stand here.",
      outcomes: [
        { id: "one", label: "One" },
        { id: "other", label: "Other" },
      ],
      reads,
    });
    return [id, check] as const;
  }),
);
const made = (...path: object[]) => checksOfPath(stepSchema.array().parse(path), { checks });
const plugs = { part: "casing 2", passes: [".669 in"] };

describe("the checks of a path", () => {
  it("are those made by hand, each once, and what was noted of place and way along with them", () => {
    expect(made({ check: "by-hand", found: "one" }, { check: "by-hand", found: "other" })).toEqual([
      "by-hand",
    ]);
    expect(made({ check: "by-hand", found: "one", where: "top", way: "both" })).toEqual([
      "by-hand",
      "reads-place",
      "reads-way",
    ]);
  });

  it("are those that swaps, bores and plugs are taken for; plugs by what they were held against", () => {
    expect(made({ swap: ["piston 1", "casing 2"], found: "free", where: "top" })).toEqual([
      "reads-swap",
      "reads-place",
    ]);
    expect(made({ bore: { part: "casing 2", readings: [{ angle: 0, diameter: ".67 in" }] } })).toEqual([
      "reads-ovality",
    ]);
    expect(made({ plugs })).toEqual([]);
    expect(made({ plugs, reference: plugs })).toEqual(["reads-reduction"]);
    expect(made({ plugs, piston: { part: "piston 2", diameter: ".6675 in" } })).toEqual(["reads-clearance"]);
  });

  it("are none where only something was mended", () => {
    expect(made({ repair: "clean", result: "no-change" })).toEqual([]);
  });
});
