import { expect, it } from "vitest";
import { againstHandbook } from "@/lib/consult/sheet/againstHandbook";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const job = (...path: readonly object[]) => makeCase({ id: "a", instrument: "cornet", path });
const free = { check: "valve-travel", part: "valve 3", found: "free" };

it("what the handbook says is rarely or never met with a cause speaks against it", () => {
  const against = againstHandbook(job(free), ["gummed-oil", "casing-dented"], smallVocabulary);
  expect(against.get("gummed-oil")).toEqual([
    { check: "valve-travel", outcome: "free", words: "Valve travel: it is free", often: "never" },
  ]);
  expect(against.get("casing-dented")).toMatchObject([{ often: "rarely" }]);
});

it("nothing speaks against a cause where the findings are usual, unknown to it, or of the mended instrument", () => {
  const hangs = { ...free, found: "hangs" };
  const cured = { repair: "ease-casing", part: "casing 3", result: "fixed" };
  const against = againstHandbook(
    job(hangs, cured, free),
    ["casing-dented", "no-such-cause"],
    smallVocabulary,
  );
  expect([...against.values()]).toEqual([[], []]);
});
