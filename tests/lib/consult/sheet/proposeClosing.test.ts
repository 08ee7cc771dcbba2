import { describe, expect, it } from "vitest";
import type { LikelyCause } from "@/lib/consult/answer";
import { repairsInView } from "@/lib/consult/quote/repairsInView";
import { proposeClosing } from "@/lib/consult/sheet/proposeClosing";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const likely = (id: string, probability: number): LikelyCause => ({
  id,
  label: id,
  probability,
  for: [],
  against: [],
  cases: [],
});
const causes = [likely("casing-dented", 0.6), likely("gummed-oil", 0.25)];
const harm = { repair: "ease-casing", part: "casing 3", what: "It cracked." };
const job = (more: object = {}) =>
  makeCase({
    id: "a",
    instrument: "cornet",
    path: [
      { check: "valve-travel", part: "valve 3", found: "hangs", minutes: 2 },
      { repair: "ease-casing", part: "casing 3", result: "fixed", minutes: 30 },
    ],
    ...more,
  });

describe("what closing proposes", () => {
  it("takes the leading cause for the root, one not far behind for a help, each on its own kind of part", () => {
    expect(proposeClosing(job(), { causes }, smallVocabulary).causes).toMatchObject([
      { cause: "casing-dented", part: "casing 3", role: "root", probability: 0.6 },
      { cause: "gummed-oil", part: "valve 3", role: "contributing" },
    ]);
    const sure = proposeClosing(
      job(),
      { causes: [likely("casing-dented", 0.9), likely("gummed-oil", 0.1)] },
      smallVocabulary,
    );
    expect(sure.causes).toHaveLength(1);
  });

  it("adds the minutes up, ends as the last repair ended, and charges what was quoted", () => {
    expect(
      proposeClosing(job({ quoted: { minutes: 40, price: 48 } }), { causes }, smallVocabulary),
    ).toMatchObject({
      outcome: "fixed",
      minutes: "32",
      charge: "48",
      swallowedMinutes: "",
      swallowedMoney: "",
    });
  });

  it("swallows the harms that the shop pays for, at what an hour costs, and leaves a row for what they brought on", () => {
    const harms = [
      { ...harm, minutes: 20, paidBy: "shop" },
      { ...harm, what: "It was scratched.", minutes: 15, paidBy: "customer" },
    ];
    const closing = proposeClosing(job({ harms }), { causes }, smallVocabulary, 54);
    // 20 min at 54 an hour.
    expect(closing).toMatchObject({ swallowedMinutes: "20", swallowedMoney: "18" });
    expect(closing.causes.at(-1)).toMatchObject({ cause: "", part: "casing 3" });
  });

  it("keeps what the sheet says already", () => {
    const said = {
      causes: [{ cause: "gummed-oil", role: "root" }],
      swallowed: { minutes: 5, money: 3 },
      minutes: 99,
    };
    expect(proposeClosing(job(said), { causes }, smallVocabulary, 54)).toMatchObject({
      causes: [{ from: "0", cause: "gummed-oil", role: "root" }],
      minutes: "99",
      swallowedMinutes: "5",
      swallowedMoney: "3",
    });
  });
});

describe("the repairs that a job is still reckoned with", () => {
  it("are those on its plan that are not done, each once; without a plan the first of the likeliest cause", () => {
    const plan = [{ repair: "clean-and-oil" }, { repair: "ease-casing" }, { repair: "clean-and-oil" }];
    expect(repairsInView(job({ plan }), { causes }, smallVocabulary)).toEqual(["clean-and-oil"]);
    expect(repairsInView(job({ path: [] }), { causes }, smallVocabulary)).toEqual(["ease-casing"]);
    expect(repairsInView(job(), { causes }, smallVocabulary)).toEqual([]);
    expect(repairsInView(job({ path: [] }), { causes: [] }, smallVocabulary)).toEqual([]);
  });
});
