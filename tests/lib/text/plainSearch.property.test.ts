import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { searchText } from "@/lib/text/searchText";
import { addToTextIndex, buildTextIndex } from "@/lib/text/textIndex";
import { wordSimilarities } from "@/lib/text/wordSimilarities";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { plainSearch } from "./plainSearch";

/** Words that begin like one another, lie a slip apart, have one stem, are stop words, or have letters out of the way. */
const known =
  "valve valves Valve vale value clave slide slides sliding slider stick sticks sticky stuck the of cork corks corked fork pad pads padded spring springs sprung string case cases casing casings casting cast casting's don't .669 0.669 669 Größe grosse piston pistons pistol lever levers never river x".split(
    " ",
  );
const asked = [
  ..."vlave valev sldie slid spirng sprin pistn pisotn psiton castign csaing casin v va zebra corkked stikcy levres".split(
    " ",
  ),
  ...known,
];
const text = (words: readonly string[], maxLength: number) =>
  fc.array(fc.constantFrom(...words), { maxLength }).map((list) => list.join(" "));
const told = text(known, 8);
const anyCase = fc
  .record({ title: told, complaint: told, story: told, lesson: told, maker: text(known, 2) })
  .chain(({ title, complaint, story, lesson, maker }) =>
    fc.nat({ max: 5 }).map((number) =>
      makeCase({
        id: `case-${number}`,
        title: `Job ${title}`.slice(0, 120),
        complaint: `Job ${complaint}`,
        lessons: [`Job ${lesson}`],
        maker,
        story,
        instrument: number % 2 === 0 ? "cornet" : "flute",
        causes: number % 3 === 0 ? [{ cause: "gummed-oil", role: "root" }] : [],
      }),
    ),
  );

/**
 * Puts cases in one after another, later versions of a case in place of earlier ones, both ways.
 *
 * @param searched how many are in when somebody first searches
 */
function putAll(versions: readonly Case[], searched = versions.length) {
  const index = buildTextIndex([], smallVocabulary);
  const plain = plainSearch([], smallVocabulary);
  const latest = new Map<string, Case>();
  for (const [at, kase] of versions.entries()) {
    if (at === searched) searchText(index, "valve");
    addToTextIndex(index, kase, smallVocabulary, latest.get(kase.id));
    plain.put(kase, latest.get(kase.id));
    latest.set(kase.id, kase);
  }
  return { index, plain };
}

const versions = fc.array(anyCase, { maxLength: 14 });
const runs = { numRuns: 400 };

describe("the text index beside a library's, one case put in at a time", () => {
  it("tells the same likeness of every case, after whatever was put in and taken out", () => {
    fc.assert(
      fc.property(versions, text(asked, 12), (list, words) => {
        const { index, plain } = putAll(list);
        const there = plain.similarities(words);
        const here = wordSimilarities(index, words);
        expect(new Set(here.keys())).toEqual(new Set(there.keys()));
        for (const [id, similarity] of there) expect(here.get(id)).toBeCloseTo(similarity, 10);
      }),
      runs,
    );
  });

  it("finds the same cases with the same scores by the same words, whenever it was first searched", () => {
    fc.assert(
      fc.property(versions, fc.nat({ max: 14 }), text(asked, 4), (list, searched, words) => {
        const { index, plain } = putAll(list, searched);
        const there = new Map(plain.find(words).map((hit) => [hit.id, hit]));
        const here = searchText(index, words);
        expect(new Set(here.map(({ id }) => id))).toEqual(new Set(there.keys()));
        for (const { id, score, terms } of here) {
          expect(score).toBeCloseTo(there.get(id)?.score ?? Number.NaN, 9);
          expect(new Set(terms)).toEqual(new Set(there.get(id)?.terms));
        }
      }),
      runs,
    );
  });
});
