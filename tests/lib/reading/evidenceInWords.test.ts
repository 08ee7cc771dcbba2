import { describe, expect, it } from "vitest";
import { readEvidence } from "@/lib/reading/readEvidence";
import { buildReader } from "@/lib/reading/reader";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";

/* Evidence as it is put down at the bench, over the vocabulary that ships; what it means is common practice. */
const reader = buildReader(loadVocabulary("content/vocabulary").vocabulary);
const read = (instrument: string, check: string, found: string) => {
  const { finding } = readEvidence({ check, found }, reader, instrument);
  return finding && `${finding.check} ${finding.outcome}`;
};

describe("evidence in words, by the vocabulary that ships", () => {
  it("keeps to the check that was named, whatever else the words would mean", () => {
    expect(read("trumpet", "spring", "same length as the others")).toBe("spring-look right");
    expect(read("trumpet", "bottom cap off, work valve", "still sticks the last quarter inch")).toBe(
      "bottom-cap-off no-change",
    );
    expect(read("clarinet", "pads", "A key pad torn")).toBe("look-pads torn");
  });

  it("says outright what a phrase says all of, and calls a reading by the words alone a guess", () => {
    const how = (check: string, found: string) =>
      readEvidence({ check, found }, reader, "trumpet").finding?.how;
    expect(how("valve travel", "hangs")).toBe("outright");
    expect(how("valve-travel", "hangs")).toBe("outright");
    expect(how("look at the casings", "somebody pushed a thumb sized ding in the barrel")).not.toBe(
      "outright",
    );
  });

  it("is about the part that was found, where others were looked at, too", () => {
    const swapped = { check: "swap pistons 1 and 2", found: "drag stays with casing 2" };
    expect(readEvidence(swapped, reader, "trumpet").finding).toMatchObject({
      check: "swap-test",
      outcome: "stays-with-casing",
      part: { place: 2 },
    });
  });

  it("leaves unread what could be several things", () => {
    expect(read("trumpet", "had a look", "so so")).toBeUndefined();
  });
});
