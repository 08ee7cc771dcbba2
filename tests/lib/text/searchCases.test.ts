import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { searchCases } from "@/lib/text/searchCases";
import { buildTextIndex } from "@/lib/text/textIndex";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const cases: readonly Case[] = [
  makeCase({
    id: "23-001",
    received: "2023-02-01",
    title: "Valve sticks in the cold",
    complaint: "It hangs on the way up.",
    story: "Washed, dried and oiled.",
  }),
  makeCase({
    id: "23-002",
    received: "2023-03-01",
    title: "Slide will not come",
    complaint: "Somebody pulled at it.",
    story: "The valve beside it sticks a little as well, and was left as it was.",
  }),
  makeCase({
    id: "23-003",
    received: "2023-04-01",
    title: "Low notes are airy",
    complaint: "Airy from one day to the next.",
    story: "A pad leaks. It was the smallest of them.",
  }),
  makeCase({
    id: "23-004",
    received: "2023-05-01",
    title: "Buzz in the bell",
    complaint: "It buzzes on one note.",
    instrument: "euphonium",
    maker: "Marrowby",
  }),
  makeCase({
    id: "23-005",
    received: "2023-06-01",
    title: "Pad leaks",
    complaint: "Leaks, and it squeaks too.",
  }),
  makeCase({
    id: "23-006",
    received: "2023-07-01",
    title: "Slow after the winter",
    complaint: "All of it is slow.",
    causes: [{ cause: "gummed-oil", role: "root" }],
  }),
  makeCase({
    id: "23-007",
    received: "2023-07-01",
    title: "Rattle",
    complaint: "It rattles.",
    lessons: ["Look at the solder before the bell."],
  }),
  makeCase({
    id: "24-001",
    received: "2024-01-01",
    title: "Sticky key",
    complaint: "A key clings to its pad.",
    story: "Washed and powdered.",
  }),
];
const casebook = { cases: new Map(cases.map((kase) => [kase.id, kase])), problems: [] };
const index = buildTextIndex(cases, smallVocabulary);
const search = (words: string, choice = {}) => searchCases(casebook, index, { words, choice });
const idsOf = (words: string) => search(words).found.map(({ case: { id } }) => id);
const marked = (runs: readonly Readonly<{ text: string; hit: boolean }>[]) =>
  runs.filter(({ hit }) => hit).map(({ text }) => text);

describe("a search ranks a small casebook so", () => {
  it.each([
    [
      "sticks",
      ["23-001", "24-001", "23-002"],
      "title; a longer word in the title; only the story, in passing",
    ],
    [
      "pad leaks",
      ["23-005", "23-003"],
      "both words in the title; both in the story; one word alone is left out",
    ],
    ["leak", ["23-005", "23-003"], "the stem is the same: title and complaint, then the story"],
    ["bell", ["23-004", "23-007"], "title before lesson"],
    ["varnish", ["23-006"], "what the cause is also called, though the case never says it"],
    ["marrowby", ["23-004"], "the maker"],
    [
      "airy winter",
      ["23-003", "23-006"],
      "no case has both words: each has one, and 'airy' stands in two fields",
    ],
  ])("'%s' finds %j: %s", (words, ids) => {
    expect(idsOf(words)).toEqual(ids);
  });

  it("the last word may be only begun: 'eupho' finds the euphonium, which is nowhere written so", () => {
    expect(idsOf("eupho")).toEqual(["23-004"]);
    expect(idsOf("buzz eupho")).toEqual(["23-004"]);
  });

  it("a word before the last is whole: 'marr bell' finds bells and nothing by its maker", () => {
    expect(idsOf("bell marr")).toEqual(["23-004"]);
    expect(idsOf("marr bell")).toEqual(["23-004", "23-007"]);
  });

  it.each([
    ["stikcs", "sticks", "two neighbours swapped"],
    ["sticsk", "sticks", "two neighbours swapped at the end"],
    ["stcks", "sticks", "a letter missed"],
    ["stixks", "sticks", "a wrong letter"],
    ["euphonuim", "euphonium", "two neighbours swapped in a long word"],
    ["ratle", "rattle", "a double letter written once"],
  ])("the slip '%s' finds what '%s' finds best: %s", (slip, word) => {
    expect(idsOf(slip)[0]).toBe(idsOf(word)[0]);
  });

  it("a word of fewer than four letters is not guessed at", () => {
    expect(idsOf("pda")).toEqual([]);
  });

  it("a word that the casebook knows is never taken for a slip: no near word, were its case ever so full of it, outranks it", () => {
    const twins = [
      makeCase({ id: "a", title: "Stick, stick and stick", complaint: "Stick." }),
      makeCase({
        id: "b",
        title: "Untold",
        story: "Among much else that was found and said, there was a slick.",
      }),
    ];
    const book = { cases: new Map(twins.map((kase) => [kase.id, kase])), problems: [] };
    const { found } = searchCases(book, buildTextIndex(twins, smallVocabulary), {
      words: "slick",
      choice: {},
    });
    expect(found.map(({ case: { id } }) => id)).toEqual(["b"]);
  });

  it("a slip among several words does not cost the others their say", () => {
    expect(idsOf("valve stikcs")).toEqual(["23-001", "23-002"]);
    expect(idsOf("stikcs valve")).toEqual(["23-001", "23-002"]);
  });

  it("where one case has all the words, those with some of them stay away", () => {
    expect(idsOf("slow winter")).toEqual(["23-006"]);
    expect(idsOf("bell solder")).toEqual(["23-007"]);
  });

  it("words that stand in every sentence are passed over, and alone they find nothing", () => {
    expect(idsOf("it was in the bell")).toEqual(idsOf("bell"));
    expect(search("the").total).toBe(0);
  });
});

describe("a search without words", () => {
  it.each(["", "   "])("brings every case, the newest first, of one day the higher id first", (words) => {
    expect(search(words)).toMatchObject({ total: 8 });
    expect(idsOf(words)).toEqual([
      "24-001",
      "23-007",
      "23-006",
      "23-005",
      "23-004",
      "23-003",
      "23-002",
      "23-001",
    ]);
  });

  it("of signs alone finds nothing, and fails at nothing", () => {
    expect(search("?! -- *").total).toBe(0);
    expect(search("\u0000 ( [ \\").total).toBe(0);
  });
});

describe("what a search brings", () => {
  it("has the words marked in the title and in the stretch shown, also where they were guessed at", () => {
    const [first, , third] = search("sticks").found;
    expect(first && marked(first.title)).toEqual(["sticks"]);
    expect(third && marked(third.excerpt)).toEqual(["sticks"]);
    const [guessed] = search("stikcs").found;
    expect(guessed && marked(guessed.title)).toEqual(["sticks"]);
    const [begun] = search("airy smal").found;
    expect(begun && marked(begun.excerpt)).toContain("smallest");
  });

  it("is narrowed by facets, in the same order, and counted by them", () => {
    const { found, total, facets } = search("bell", { instrument: "flute" });
    expect(found.map(({ case: { id } }) => id)).toEqual(["23-007"]);
    expect(total).toBe(1);
    expect([...facets.instrument]).toEqual([
      ["euphonium", 1],
      ["flute", 1],
    ]);
  });

  it("lays out as many as asked and counts them all", () => {
    const { found, total } = searchCases(casebook, index, { words: "", choice: {}, most: 3 });
    expect([found.length, total]).toEqual([3, 8]);
  });
});
