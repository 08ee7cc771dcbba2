import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { freshenBench } from "@/lib/consult/bench/freshenBench";
import { openBench } from "@/lib/consult/bench/openBench";
import { searchText } from "@/lib/text/searchText";
import { goodCase } from "@/tests/fixtures/goodCase";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const version = (id: string, title: string) =>
  goodCase.replace(/^id: .*$/m, `id: ${id}`).replace(/^title: .*$/m, `title: ${title}`);

function openShop() {
  const content = temporaryFolder();
  const cases = join(content, "cases");
  mkdirSync(cases);
  const write = (file: string, text: string) => writeFileSync(join(cases, file), text);
  write("one.md", version("24-901", "One"));
  write("two.md", version("24-902", "Two"));
  const open = openBench({ BENCHLORE_CONTENT: content, BENCHLORE_CACHE: "none" });
  const found = (word: string) => searchText(open.bench.text, word).map(({ id }) => id);
  const told = () => [...open.casebook.cases.values()].map(({ title }) => title);
  return { open, write, found, told, remove: (file: string) => rmSync(join(cases, file)) };
}

describe("an open bench whose case files change", () => {
  it("takes in a new file and a new version, in casebook, bench and search", () => {
    const { open, write, found, told } = openShop();
    write("two.md", version("24-902", "Quagga"));
    write("three.md", version("24-903", "Zebra"));
    expect(freshenBench(open, ["two.md", "three.md"])).toBe(true);
    expect(told()).toEqual(["One", "Quagga", "Zebra"]);
    expect([found("quagga"), found("zebra")]).toEqual([["24-902"], ["24-903"]]);
    expect([...open.bench.cases.keys()].length + open.bench.open.size).toBe(3);
  });

  it("passes over what it knows: the very case stays", () => {
    const { open, write } = openShop();
    const before = open.casebook.cases.get("24-901");
    write("one.md", version("24-901", "One"));
    expect(freshenBench(open, ["one.md"])).toBe(true);
    expect(open.casebook.cases.get("24-901")).toBe(before);
    expect(open.bench.cases.get("24-901") ?? open.bench.open.get("24-901")).toBe(before);
  });

  it("stays as it was and says so where a file is gone, at fault, or another case now", () => {
    const changes: readonly ((shop: ReturnType<typeof openShop>) => void)[] = [
      ({ remove }) => remove("one.md"),
      ({ write }) => write("one.md", "no case at all"),
      ({ write }) => write("one.md", version("24-999", "Another id in a known file")),
      ({ write }) => write("one.md", version("24-902", "The id of another file")),
    ];
    for (const change of changes) {
      const shop = openShop();
      shop.write("three.md", version("24-903", "Zebra"));
      change(shop);
      expect(freshenBench(shop.open, ["three.md", "one.md"])).toBe(false);
      expect(shop.told()).toEqual(["One", "Two"]);
    }
  });

  it("says that all has to be loaded again where a file that was at fault is mended: its problems have to go", () => {
    const shop = openShop();
    shop.write("bad.md", "no case at all");
    const open = openBench({ BENCHLORE_CONTENT: shop.open.folders.content, BENCHLORE_CACHE: "none" });
    expect(open.problems.map(({ file }) => file)).toContain("bad.md");
    shop.write("bad.md", version("24-904", "Mended"));
    expect(freshenBench(open, ["bad.md"])).toBe(false);
  });
});
