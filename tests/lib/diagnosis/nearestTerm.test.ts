import { describe, expect, it } from "vitest";
import { nearestTerm } from "@/lib/diagnosis/nearestTerm";

describe("nearestTerm", () => {
  it("takes a slip for the word that it is nearest to", () => {
    expect(nearestTerm("spindel", ["spin", "spindle"])).toBe("spindle");
    expect(nearestTerm("stockngs", ["stack", "stocking", "stockings"])).toBe("stockings");
  });

  it("guesses at no short word, no number and no other first letter", () => {
    expect(nearestTerm("pads", ["pages"])).toBeUndefined();
    expect(nearestTerm("12345", ["12346"])).toBeUndefined();
    expect(nearestTerm("valve", ["salve"])).toBeUndefined();
  });

  it("gives up on what lies further away", () => {
    expect(nearestTerm("toaster", ["trumpet", "tooth"])).toBeUndefined();
  });
});
