import { expect, it } from "vitest";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const repair = { repair: "clean-and-oil", part: "valve 3", result: "fixed" };
const check = (found: string, part = "valve 3") => ({ check: "valve-travel", part, found });
const standings = (...path: unknown[]) =>
  listProofs(makeCase({ id: "a", instrument: "cornet", path }), smallVocabulary).map(
    ({ key, standing }) => `${key}: ${standing}`,
  );
const wanted = (standing: string) => [`valve-travel free valve 3: ${standing}`];

it("a repair is proven only by a check made after it", () => {
  expect(standings(check("free"), repair)).toEqual(wanted("open"));
  expect(standings(repair, check("free"))).toEqual(wanted("proven"));
});

it("of several checks after a repair the last one counts", () => {
  expect(standings(repair, check("hangs"), check("free"))).toEqual(wanted("proven"));
  expect(standings(repair, check("free"), check("hangs"))).toEqual(wanted("contradicted"));
});

it("a second repair has to be proven anew, and a proof that both ask for stands once", () => {
  const second = { ...repair, repair: "ease-casing", part: "casing 3" };
  expect(standings(repair, check("free"), second)).toEqual(wanted("open"));
  expect(standings(repair, second, check("free"))).toEqual(wanted("proven"));
});

it("a check on another valve proves nothing; one on all of them does", () => {
  expect(standings(repair, check("free", "valve 2"))).toEqual(wanted("open"));
  expect(standings(repair, check("free", "other valve"))).toEqual(wanted("open"));
  expect(standings(repair, check("free", "valve"))).toEqual(wanted("proven"));
});

it("a repair that changed nothing asks for no proof; one that did harm does", () => {
  expect(standings({ ...repair, result: "no-change" })).toEqual([]);
  expect(standings({ ...repair, result: "harm" })).toEqual(wanted("open"));
});
