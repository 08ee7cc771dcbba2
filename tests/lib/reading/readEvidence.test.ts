import { describe, expect, it } from "vitest";
import { formatPartRef } from "@/lib/casebook/partRef";
import { readEvidence } from "@/lib/reading/readEvidence";
import { smallReader } from "./smallVocabulary";

const read = (check: string, found: string, part?: string) =>
  readEvidence({ check, found, ...(part === undefined ? {} : { part }) }, smallReader, "trumpet").finding;
const line = (...evidence: Parameters<typeof read>) => {
  const finding = read(...evidence);
  if (!finding) return undefined;
  const { check, outcome, part, absent, doubtful } = finding;
  return `${check} ${outcome}${part ? ` ${formatPartRef(part)}` : ""}${absent ? " -" : ""}${doubtful ? " ?" : ""}`;
};

describe("readEvidence", () => {
  it("takes ids as they stand, whatever words they are made of", () => {
    expect(line("travel", "hangs", "valve 2")).toBe("travel hangs valve 2");
    expect(line("knock", "none")).toBe("knock none");
    expect(line("swap-test", "casing", "casing 2")).toBe("swap-test casing casing 2");
  });

  it("reads words for check and outcome", () => {
    expect(line("valve travel", "it sticks")).toBe("travel hangs valve");
    expect(line("look at the bell", "bent")).toBe("bell-look bent bell");
  });

  it("names the part as its check would", () => {
    expect(line("travel", "hangs", "piston 2")).toBe("travel hangs valve 2");
    expect(line("travel", "free", "other valve")).toBe("travel free other valve");
    expect(line("2nd valve travel", "sticks")).toBe("travel hangs valve 2");
    expect(line("travel", "hangs", "bell")).toBe("travel hangs");
  });

  it("tells all that it may mean where nobody can be sure, with doubt the less", () => {
    const mayMean = (check: string, found: string) =>
      readEvidence({ check, found }, smallReader, "trumpet").mayMean;
    const total = (check: string, found: string) =>
      mayMean(check, found).reduce((sum, { share }) => sum + share, 0);
    const [likeliest] = mayMean("casing", "dented all over, ugly");
    expect(likeliest?.meaning.outcome.id).toBe("dented");
    expect(total("casing", "dented all over, ugly")).toBeLessThanOrEqual(1);
    expect(total("casing", "maybe dented all over, ugly")).toBeLessThan(
      total("casing", "dented all over, ugly"),
    );
    expect(mayMean("travel", "hangs")).toEqual([]);
  });

  it("lets the named check answer a bare 'none', 'fine' or 'yes'", () => {
    expect(line("dents", "none")).toBe("casing-look sound -");
    expect(line("spring", "ok")).toBe("spring-look right spring");
    expect(line("look at the spring", "fine")).toBe("spring-look right spring");
    expect(line("dropped", "yes")).toBe("knock dropped");
    expect(line("dents", "yes")).toBe("casing-look dented");
  });

  it("denies and doubts as in a text", () => {
    expect(line("casing", "not dented")).toBe("casing-look sound casing -");
    expect(line("casing", "maybe dented")).toBe("casing-look dented casing ?");
    expect(line("travel", "might be hangs")).toBe("travel hangs ?");
  });

  it("gives the words it was read from", () => {
    expect(read("dents", "none")).toMatchObject({ from: "dents: none", span: [0, 11] });
  });

  it("reads nothing into words that it does not know", () => {
    expect(line("blorpf", "wibble")).toBeUndefined();
    expect(line("blorpf", "yes")).toBeUndefined();
    expect(line("constructor", "__proto__")).toBeUndefined();
  });

  it("does not answer by a check that the instrument does not have", () => {
    expect(line("pads", "torn skin")).toBeUndefined();
    expect(readEvidence({ check: "pads", found: "torn skin" }, smallReader, "clarinet").finding?.check).toBe(
      "pad-look",
    );
  });
});
