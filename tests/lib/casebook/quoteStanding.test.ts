import { describe, expect, it } from "vitest";
import { quoteStanding } from "@/lib/casebook/quoteStanding";

const stand = (minutes: number, quoted: number) =>
  quoteStanding({ status: "closed", minutes, quoted: { minutes: quoted, price: 0 } });

describe("how a job stood against its quote", () => {
  it("is told by its minutes over those quoted, each limit inside", () => {
    // Of 100 quoted minutes: up to 80, up to 110, up to 150, more.
    expect([0, 80, 81, 110, 111, 150, 151].map((minutes) => stand(minutes, 100))).toEqual([
      "under",
      "under",
      "held",
      "held",
      "over",
      "over",
      "far-over",
    ]);
  });

  it("is far over where nothing was quoted for the work that it took", () => {
    expect(stand(1, 0)).toBe("far-over");
  });

  it("is not told of an open job, or where minutes or quote are missing", () => {
    const quoted = { minutes: 60, price: 10 };
    expect(quoteStanding({ status: "open", minutes: 60, quoted })).toBeUndefined();
    expect(quoteStanding({ status: "closed", minutes: undefined, quoted })).toBeUndefined();
    expect(quoteStanding({ status: "closed", minutes: 60, quoted: undefined })).toBeUndefined();
  });
});
