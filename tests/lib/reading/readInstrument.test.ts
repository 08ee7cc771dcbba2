import { describe, expect, it } from "vitest";
import { readPart } from "@/lib/reading/parts/readPart";
import { readInstrument } from "@/lib/reading/readInstrument";
import { smallReader } from "./smallVocabulary";

describe("readInstrument", () => {
  it("takes an id, a label or a synonym, in any letters", () => {
    for (const words of ["trumpet", " Trumpet ", "TPT", "an old student trumpet"]) {
      expect(readInstrument(words, smallReader)).toBe("trumpet");
    }
  });

  it("forgives a slip in a name, but not in an abbreviation", () => {
    expect(readInstrument("trumpte", smallReader)).toBe("trumpet");
    expect(readInstrument("tpts", smallReader)).toBeUndefined();
  });

  it("takes an instrument before its family, in whatever order they are named", () => {
    for (const words of ["brass trumpet", "trumpet of brass"]) {
      expect(readInstrument(words, smallReader)).toBe("trumpet");
    }
  });

  it("knows what it does not know", () => {
    for (const words of ["", "something with strings", "constructor"]) {
      expect(readInstrument(words, smallReader)).toBeUndefined();
    }
  });
});

describe("readPart", () => {
  it("takes a part as a case file writes it", () => {
    expect(readPart("casing 2", smallReader, "trumpet")).toEqual({ part: "casing", place: 2, others: false });
    expect(readPart("other valve", smallReader, "trumpet")).toEqual({ part: "valve", others: true });
  });

  it("takes bench words, and prefers the part that is numbered", () => {
    expect(readPart("2nd casing", smallReader, "trumpet")).toEqual({
      part: "casing",
      place: 2,
      others: false,
    });
    expect(readPart("bell side of the 3rd", smallReader, "trumpet")).toMatchObject({ place: 3 });
  });

  it("names none where there is none", () => {
    expect(readPart("thingamajig", smallReader, "trumpet")).toBeUndefined();
    expect(readPart("thingamajig 2", smallReader, "trumpet")?.part).not.toBe("thingamajig");
  });
});
