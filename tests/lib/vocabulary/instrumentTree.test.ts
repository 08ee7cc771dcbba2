import { describe, expect, it } from "vitest";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { placesOf } from "@/lib/vocabulary/placesOf";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

describe("how many of a numbered part an instrument has", () => {
  it.each([
    ["is its family's number where it says none itself", "cornet", "valve", 3],
    ["is its own number before its family's", "euphonium", "valve", 4],
    ["is, for a part that belongs to another, the other's", "euphonium", "piston", 4],
    ["is not known where nothing in the tree says", "flute", "valve", undefined],
    ["is not known of a part without numbers", "cornet", "bell-stem", undefined],
    ["is not known of an instrument that is not known", "lute", "valve", undefined],
  ])("%s", (_, instrument, part, places) => {
    expect(placesOf(smallVocabulary, instrument, part)).toBe(places);
  });
});

describe("an entry written for some families", () => {
  it.each([
    ["serves the family itself", ["brass"], "brass", true],
    ["serves what lies under it", ["brass"], "cornet", true],
    ["serves a family that it lies under, since it may be meant", ["cornet"], "brass", true],
    ["does not serve another branch", ["brass"], "flute", false],
    ["serves where one of several families does", ["flute", "brass"], "cornet", true],
    ["serves an instrument of which nothing is known", ["brass"], undefined, true],
  ])("%s", (_, families, instrument, serves) => {
    expect(appliesTo(smallVocabulary, families, instrument)).toBe(serves);
  });
});
