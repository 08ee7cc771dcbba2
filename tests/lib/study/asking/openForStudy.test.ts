import { describe, expect, it } from "vitest";
import { legalAsks } from "@/lib/study/asking/legalAsks";
import { openForStudy } from "@/lib/study/asking/openForStudy";
import { found, studyBench, studyCase } from "../studyBench";

const { vocabulary } = studyBench;
const open = (...settled: string[]) => openForStudy(vocabulary, "horn", new Set(settled));
const idsOf = (...settled: string[]) => open(...settled).map(({ check }) => check.id);

describe("the checks that can be asked for", () => {
  it("are those made on the instrument, by risk and then by label, so that their order tells nothing", () => {
    expect(idsOf()).toEqual([
      "ask-age",
      "dent-seen",
      "cleaned",
      "dirt-seen",
      "place",
      "travel",
      "bore-look",
      "cap-off",
      "swap",
    ]);
  });

  it("leave out what is settled", () => {
    expect(idsOf("dent-seen", "travel")).not.toContain("dent-seen");
  });

  it("say what has to come first until it has come", () => {
    const first = (...settled: string[]) =>
      open(...settled).find(({ check }) => check.id === "bore-look")?.first;
    expect(first()).toEqual(["cap-off"]);
    expect(first("cap-off")).toEqual([]);
  });
});

describe("the asks that count", () => {
  const kase = studyCase([found("travel", "hangs", { where: "top" }), found("bore-look", "yes")]);
  const legal = (...asked: string[]) => legalAsks(kase, asked, vocabulary);

  it("are taken in their order, each once", () => {
    expect(legal("travel", "dent-seen", "travel")).toEqual(["travel", "dent-seen"]);
  });

  it("leave out what is not open yet, and take it once it is", () => {
    expect(legal("bore-look", "cap-off", "bore-look")).toEqual(["cap-off", "bore-look"]);
  });

  it("leave out what is unheard of and what is not made on the instrument", () => {
    expect(legal("unheard-of", "reed-look", "dent-seen")).toEqual(["dent-seen"]);
  });

  it("leave out what was answered along with another", () => {
    expect(legal("travel", "place")).toEqual(["travel"]);
  });
});
