import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { declineWord } from "@/lib/casebook/keeping/declineWord";
import { realDisk } from "@/lib/casebook/keeping/disk";
import { editFile } from "@/lib/casebook/keeping/editFile";
import { loadDeclinedWords } from "@/lib/casebook/keeping/loadDeclinedWords";
import { reviseWord } from "@/lib/casebook/keeping/reviseWord";
import { readDeclinedWords } from "@/lib/vocabulary/declinedWords";
import type { WordChange } from "@/lib/vocabulary/wordChange";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const change: WordChange = {
  cause: "gummed-oil",
  others: false,
  check: "valve-travel",
  outcome: "drags",
  word: "usually",
  proposed: "often",
};
const text = "# Dirt\n- id: gummed-oil\n  findings:\n    valve-travel: { drags: usually } # kept\n";

function shopFolder(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "causes"));
  writeFileSync(join(folder, "causes", "brass.yaml"), "- id: water-key-leak\n");
  writeFileSync(join(folder, "causes", "piston.yaml"), text);
  return folder;
}
const filesIn = (folder: string) => readdirSync(folder).filter((name) => name !== ".locks");
const pistons = (folder: string) => readFileSync(join(folder, "causes", "piston.yaml"), "utf8");

describe("taking a word over into the handbook's file", () => {
  it("changes the one file, leaves nothing beside it, and is refused the second time", () => {
    const folder = shopFolder();
    expect(reviseWord(change, folder, { mark: "a" })).toBe("saved");
    expect(pistons(folder)).toBe(text.replace("usually", "often"));
    expect(filesIn(join(folder, "causes"))).toEqual(["brass.yaml", "piston.yaml"]);
    expect(reviseWord(change, folder, { mark: "b" })).toBe("moved");
  });

  it("is refused where no file tells of the cause", () => {
    expect(reviseWord({ ...change, cause: "nobody-knows" }, shopFolder(), { mark: "a" })).toBe("moved");
  });

  it("gives way to an editor that writes meanwhile: what was written stands", () => {
    const folder = shopFolder();
    const disk = {
      ...realDisk,
      writeWhole: (path: string, bytes: Uint8Array) => {
        realDisk.writeWhole(path, bytes);
        if (path.endsWith(".half")) writeFileSync(join(folder, "causes", "piston.yaml"), `${text}# typed\n`);
      },
    };
    expect(reviseWord(change, folder, { mark: "a", disk })).toBe("busy");
    expect(pistons(folder)).toBe(`${text}# typed\n`);
    expect(filesIn(join(folder, "causes"))).toEqual(["brass.yaml", "piston.yaml"]);
  });

  it("leaves the file whole when the disk fails at any step", () => {
    for (const step of ["writeWhole", "rename"] as const) {
      const folder = shopFolder();
      const disk = {
        ...realDisk,
        [step]: (...paths: readonly unknown[]) => {
          if (!String(paths[0]).endsWith(".half")) return Reflect.apply(realDisk[step], undefined, paths);
          throw Object.assign(new Error("full"), { code: "ENOSPC" });
        },
      };
      expect(() => reviseWord(change, folder, { mark: "a", disk })).toThrow("full");
      expect(pistons(folder)).toBe(text);
      expect(filesIn(join(folder, "causes"))).toEqual(["brass.yaml", "piston.yaml"]);
    }
  });

  it("touches no file that is not UTF-8", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "a.yaml"), Buffer.from([0x23, 0xff, 0x0a]));
    expect(() => editFile({ folder, file: "a.yaml" }, () => "new", { mark: "a" })).toThrow(TypeError);
    expect([...readFileSync(join(folder, "a.yaml"))]).toEqual([0x23, 0xff, 0x0a]);
  });
});

describe("remembering that a word stays", () => {
  const read = (folder: string) => readFileSync(join(folder, "declined-words.yaml"), "utf8");

  it("is written once, however often it is decided", () => {
    const folder = temporaryFolder();
    expect(declineWord(change, folder, { mark: "a" })).toBe("saved");
    expect(declineWord(change, folder, { mark: "b" })).toBe("saved");
    expect(readDeclinedWords(read(folder)).declined).toEqual([change]);
  });

  it("is read back; without a file there is none, and one that cannot be opened is said", () => {
    const folder = temporaryFolder();
    expect(loadDeclinedWords(folder)).toEqual({ declined: [], problems: [] });
    declineWord(change, folder, { mark: "a" });
    expect(loadDeclinedWords(folder)).toEqual({ declined: [change], problems: [] });
    const other = temporaryFolder();
    symlinkSync(join(folder, "declined-words.yaml"), join(other, "declined-words.yaml"));
    expect(loadDeclinedWords(other).problems[0]?.received).toContain("cannot be opened");
  });

  it("leaves a list that cannot be read, or not be added to, as it is", () => {
    for (const broken of ["- {", "[]\n"]) {
      const folder = temporaryFolder();
      writeFileSync(join(folder, "declined-words.yaml"), broken);
      expect(declineWord(change, folder, { mark: "a" })).toBe("broken");
      expect(read(folder)).toBe(broken);
    }
  });
});
