import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { formatProblem } from "@/lib/document/contentProblem";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const prose = "A few plain words that are long enough to stand here.";
const check = (id: string, more = "") => `- id: ${id}
  label: How it runs
  question: How does it run?
  families: [brass]
  parts: [valve]
  risk: 1
  minutes: 2
  how: ${prose}
  outcomes: [{ id: free, label: Free }, { id: drags, label: Drags }]
${more}`;
const whole: Readonly<Record<string, string>> = {
  "instruments.yaml": "- { id: brass, label: Brass }\n- { id: cornet, label: Cornet, parent: brass }\n",
  "parts.yaml": "- { id: valve, label: Valve, families: [brass] }\n",
  "cautions.yaml": "# none yet\n",
  "reading.yaml": "doubts: [maybe]\n",
  "checks/travel.yaml": check("travel"),
};

function load(files: Readonly<Record<string, string | undefined>>) {
  const folder = temporaryFolder();
  for (const [name, text] of Object.entries({ ...whole, ...files })) {
    if (text === undefined) continue;
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const { vocabulary, problems } = loadVocabulary(folder);
  return { vocabulary, lines: problems.map(formatProblem) };
}

describe("a vocabulary", () => {
  it("leaves a saying out whose words do not stand in it, and of another only what names nothing", () => {
    const { vocabulary, lines } = load({
      "sayings/some.yaml": `- says: drags since monday
  instrument: cornet
  means: [{ check: travel, outcome: drags, words: drags }]
  also: [travel slow]
- says: runs free
  instrument: cornet
  means: [{ check: travel, outcome: free, words: runs well }]
`,
    });
    expect(vocabulary.sayings.map(({ says, means, also }) => [says, means.length, also])).toEqual([
      ["drags since monday", 1, []],
    ]);
    expect(lines).toHaveLength(2);
    expect(lines.join("\n")).toMatch(/sayings\/some\.yaml.*runs well/);
    expect(lines.join("\n")).toMatch(/drags since monday.*slow/);
  });

  it("puts the notes on a cause together, and leaves out those on a cause that nobody knows", () => {
    const cause = `- id: dirt
  label: Dirt in the valve
  group: dirt
  families: [brass]
  parts: [valve]
  howCommon: common
  comesAbout: Spit and dust settle in the bore.
  prove: Clean it and try again.
  findings: { travel: { drags: often } }
`;
    const notes = (id: string, note: string) => `- cause: ${id}\n  notes: [${note}]\n`;
    const { vocabulary, lines } = load({
      "parts.yaml": "- { id: valve, label: Valve, families: [brass] }\n",
      "causes/a.yaml": cause,
      "notes/a.yaml": notes("dirt", "drags since the beach - sand under the thumb"),
      "notes/b.yaml":
        notes("dirt", "scrapes and grinds after a parade") + notes("dust", "sluggish in a dry hall"),
    });
    expect([...vocabulary.causeNotes]).toEqual([
      ["dirt", ["drags since the beach - sand under the thumb", "scrapes and grinds after a parade"]],
    ]);
    expect(lines).toEqual([expect.stringMatching(/notes of dust cause: found 'dust'/)]);
  });

  it("is read from its files, a kind that has none yet being empty", () => {
    const { vocabulary, lines } = load({});
    expect(lines).toEqual([]);
    expect([...vocabulary.instruments.keys()]).toEqual(["brass", "cornet"]);
    expect(vocabulary.instrumentTree.isA("cornet", "brass")).toBe(true);
    expect(vocabulary.checks.get("travel")).toMatchObject({ source: "common practice", needs: [] });
    expect(vocabulary.words.doubts).toEqual(["maybe"]);
    expect([vocabulary.causes.size, vocabulary.repairs.size, vocabulary.cautions.size]).toEqual([0, 0, 0]);
  });

  it("takes the files of a kind together in the order of their names", () => {
    const { vocabulary } = load({ "checks/a.yaml": check("first"), "checks/z.yaml": check("last") });
    expect([...vocabulary.checks.keys()]).toEqual(["first", "travel", "last"]);
  });

  it("leaves a broken entry out and keeps those around it", () => {
    const { vocabulary, lines } = load({
      "checks/a.yaml": check("first") + check("second").replace("risk: 1", "risk: 9") + check("third"),
    });
    expect([...vocabulary.checks.keys()]).toEqual(["first", "third", "travel"]);
    expect(lines).toEqual(["checks/a.yaml:15 risk: found 9; write a number of 4 or less"]);
  });

  it("leaves a broken file out and keeps the others", () => {
    const { vocabulary, lines } = load({ "checks/a.yaml": "- id: 'a\n", "checks/b.yaml": "first: 1\n" });
    expect([...vocabulary.checks.keys()]).toEqual(["travel"]);
    expect(lines).toEqual([
      expect.stringMatching(/^checks\/a\.yaml:\d the file: found YAML that cannot be read/),
      expect.stringMatching(/^checks\/b\.yaml:1 the file: found \{"first":1\}; write a list$/),
    ]);
  });

  it("keeps the first of two entries with one id", () => {
    const { vocabulary, lines } = load({ "checks/z.yaml": check("travel").replace("How it runs", "Again") });
    expect(vocabulary.checks.get("travel")?.label).toBe("How it runs");
    expect(lines).toEqual(["checks/z.yaml:1 id: found 'travel' a second time; write another id"]);
  });

  it("tells of a field that is not known: vocabulary is written by hand, and a slip would be lost in silence", () => {
    expect(load({ "checks/travel.yaml": check("travel", "  lable: x\n") }).lines).toEqual([
      "checks/travel.yaml:1 the file: found 'lable'; write no such field here: look for a slip in its name",
    ]);
  });

  it("tells of a file that is missing", () => {
    const { lines } = load({ "cautions.yaml": undefined });
    expect(lines).toEqual([
      expect.stringMatching(/^cautions\.yaml the file: found no such file; write it under /),
    ]);
  });

  it("tells of references that name nothing", () => {
    expect(load({ "checks/travel.yaml": check("travel", "  needs: [look]\n") }).lines).toEqual([
      "checks/travel needs: found 'look'; write the id of a known check",
    ]);
  });

  it("reads the small words as none where their file is broken", () => {
    const { vocabulary, lines } = load({ "reading.yaml": "dubts: [maybe]\n" });
    expect(vocabulary.words.doubts).toEqual([]);
    expect(lines).toEqual([
      expect.stringContaining("reading.yaml:1 the file: found 'dubts'; write no such field"),
    ]);
  });

  it("keeps an instrument whose parent is missing, and says which was meant", () => {
    const { vocabulary, lines } = load({
      "instruments.yaml": "- { id: brass, label: Brass }\n- { id: cornet, label: Cornet, parent: bras }\n",
    });
    expect(lines).toEqual([
      "instruments.yaml parent: found 'bras' over 'cornet'; write 'brass', or the id of another entry",
    ]);
    expect(vocabulary.instrumentTree.isA("cornet", "brass")).toBe(false);
    expect(vocabulary.instrumentTree.isA("cornet", "cornet")).toBe(true);
  });

  it("opens a circle of parents at one place, and says where", () => {
    const { vocabulary, lines } = load({
      "parts.yaml":
        "- { id: valve, label: Valve, families: [brass], parent: cap }\n" +
        "- { id: cap, label: Cap, families: [brass], parent: valve }\n",
    });
    expect(lines).toEqual([
      "parts.yaml parent: found 'cap' over 'valve'; write a parent that does not stand under it",
    ]);
    expect(vocabulary.partTree.isA("cap", "valve")).toBe(true);
  });

  it("is empty where the folder is, and says what is not there", () => {
    const nothing = Object.fromEntries(Object.keys(whole).map((name) => [name, undefined]));
    const { vocabulary, lines } = load(nothing);
    expect(vocabulary.instruments.size).toBe(0);
    expect(lines).toContainEqual(
      expect.stringMatching(/^instruments\.yaml.*: found no such file; write it under/),
    );
  });

  it("says which id names nothing, and reads on as if it were not there", () => {
    const { vocabulary, lines } = load({ "checks/travel.yaml": check("travel", "  needs: [travl]\n") });
    expect(lines).toEqual(["checks/travel needs: found 'travl'; write 'travel', or another known check"]);
    expect(vocabulary.checks.get("travel")?.needs).toEqual([]);
  });
});
