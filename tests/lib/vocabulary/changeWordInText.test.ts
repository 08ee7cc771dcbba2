import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { changeWordInText } from "@/lib/vocabulary/changeWordInText";
import { addDeclinedWord, readDeclinedWords } from "@/lib/vocabulary/declinedWords";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import type { WordChange } from "@/lib/vocabulary/wordChange";

const change: WordChange = {
  cause: "gummed-oil",
  others: false,
  check: "valve-travel",
  outcome: "drags",
  word: "usually",
  proposed: "often",
};
const text = `# Dirt
- id: gummed-oil # the commonest
  findings:
    valve-travel: { drags: usually, free:   never }
  others:
    valve-travel: { drags: "usually" }

- id: casing-dented
  findings: { valve-travel: { drags: usually } }
`;

describe("changing one word of the handbook", () => {
  it("touches nothing but the word: comments, order, blanks and quotes elsewhere stay", () => {
    expect(changeWordInText(text, change)).toEqual({
      kind: "changed",
      text: text.replace("drags: usually, free", "drags: often, free"),
    });
    expect(changeWordInText(text, { ...change, others: true })).toEqual({
      kind: "changed",
      text: text.replace('"usually"', "often"),
    });
  });

  it("keeps the line ends that it finds", () => {
    const crlf = text.replaceAll("\n", "\r\n");
    const changed = changeWordInText(crlf, change);
    expect(changed).toEqual({
      kind: "changed",
      text: crlf.replace("drags: usually, free", "drags: often, free"),
    });
  });

  it("says so where another word stands there by now, or the file does not tell of the cause", () => {
    expect(changeWordInText(text, { ...change, word: "rarely" })).toEqual({ kind: "moved", now: "usually" });
    expect(changeWordInText(text, { ...change, outcome: "hangs" })).toEqual({
      kind: "moved",
      now: undefined,
    });
    expect(changeWordInText(text, { ...change, cause: "water-key-leak" })).toEqual({ kind: "absent" });
    expect(changeWordInText("- id: [", change)).toEqual({ kind: "absent" });
  });

  it("works in every file of causes that comes with Benchlore, and there and back again is the same file", () => {
    const { vocabulary } = loadVocabulary("content/vocabulary");
    for (const file of readdirSync("content/vocabulary/causes")) {
      const whole = readFileSync(`content/vocabulary/causes/${file}`, "utf8");
      const cause = [...vocabulary.causes.values()].find(({ id }) => whole.includes(`- id: ${id}\n`));
      const [check, words] = Object.entries(cause?.findings ?? {})[0] ?? [];
      const [outcome, word] = Object.entries(words ?? {})[0] ?? [];
      if (!cause || !check || !outcome || !word) throw new Error(`${file} must tell of a cause; it does not`);
      const proposed = word === "rarely" ? "never" : "rarely";
      const there = { cause: cause.id, others: false, check, outcome, word, proposed } as const;
      const once = changeWordInText(whole, there);
      if (once.kind !== "changed") throw new Error(`${file} must take the word; it is ${once.kind}`);
      expect(once.text.length - whole.length).toBe(proposed.length - word.length);
      expect(changeWordInText(once.text, { ...there, word: proposed, proposed: word })).toEqual({
        kind: "changed",
        text: whole,
      });
    }
  });
});

describe("the words that stay", () => {
  it("are added at the end and read back; what stands before stays as it is", () => {
    const one = addDeclinedWord("", change);
    expect(readDeclinedWords(one)).toEqual({ declined: [change], problems: [] });
    const other = { ...change, outcome: "free" };
    const two = addDeclinedWord(`${one.trimEnd()} # talked over`, other);
    expect(two).toContain(" # talked over\n- {");
    expect(readDeclinedWords(two).declined).toEqual([change, other]);
    expect(readDeclinedWords("")).toEqual({ declined: [], problems: [] });
  });

  it("are none where the file cannot be read, which is said", () => {
    expect(readDeclinedWords("- { cause: x }").problems[0]?.file).toBe("declined-words.yaml");
    expect(readDeclinedWords("- {").problems).not.toEqual([]);
  });
});
