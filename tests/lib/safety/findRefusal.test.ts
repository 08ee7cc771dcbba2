import { describe, expect, it } from "vitest";
import { findRefusal } from "@/lib/safety/findRefusal";

const own = { method: "GET", host: "localhost:3170", origin: null, fetchSite: null };

describe("findRefusal", () => {
  it("lets an ordinary request through", () => {
    expect(findRefusal(own)).toBeUndefined();
  });

  it("names the host as the reason when the host is strange, even for a read", () => {
    expect(findRefusal({ ...own, host: "evil.test" })?.words).toContain("named another host");
  });

  it("says that nothing was changed when a foreign page tried to write", () => {
    expect(findRefusal({ ...own, method: "POST", origin: "http://evil.test" })?.words).toContain(
      "Nothing was changed",
    );
  });

  it("refuses a rebound name whose Origin agrees with its Host", () => {
    expect(
      findRefusal({ ...own, method: "POST", host: "evil.test:3170", origin: "http://evil.test:3170" })?.words,
    ).toContain("named another host");
  });

  it("refuses what weighs too much, and says what to do; what weighs just as much as may be goes on", () => {
    const write = { ...own, method: "POST", origin: "http://localhost:3170" };
    const most = 60 * 1024 * 1024;
    expect(findRefusal({ ...write, contentLength: String(most) })).toBeUndefined();
    expect(findRefusal({ ...write, contentLength: String(most + 1) })).toMatchObject({
      status: 413,
      words: expect.stringContaining("fewer photos"),
    });
    expect(findRefusal({ ...write, contentLength: "many" })).toBeUndefined();
  });

  it("repeats nothing of the request in its answer", () => {
    const hostile = "<script>alert(1)</script>";
    expect(findRefusal({ ...own, host: hostile })?.words).not.toContain("script");
    expect(findRefusal({ ...own, method: "POST", origin: hostile })?.words).not.toContain("script");
  });
});
