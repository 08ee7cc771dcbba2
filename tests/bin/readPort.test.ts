import { describe, expect, it } from "vitest";
import { readPort } from "../../bin/setup/readPort.mjs";

describe("readPort", () => {
  it("is 3170 when nothing is set", () => {
    expect(readPort(undefined)).toBe(3170);
    expect(readPort("")).toBe(3170);
  });

  it("takes whole numbers from 1 to 65535", () => {
    expect(readPort("1")).toBe(1);
    expect(readPort("65535")).toBe(65_535);
  });

  it.each(["0", "65536", "-1", "80.5", "1e3", "0x50", " 80", "eighty", "80;x"])("throws on %j", (text) => {
    expect(() => readPort(text)).toThrow(RangeError);
  });
});
