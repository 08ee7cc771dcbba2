import { describe, expect, it } from "vitest";
import { findChromium } from "../../bin/setup/findChromium.mjs";

const only =
  (...there: string[]) =>
  (path: string) =>
    there.includes(path);

describe("findChromium", () => {
  it("takes CHROMIUM_PATH before anything else", () => {
    const env = { CHROMIUM_PATH: "/own/browser", PATH: "/usr/bin" };
    expect(findChromium(env, only("/own/browser", "/usr/bin/chromium"))).toBe("/own/browser");
  });

  it("does not pass over a wrong CHROMIUM_PATH in silence", () => {
    const env = { CHROMIUM_PATH: "/not/there", PATH: "/usr/bin" };
    expect(() => findChromium(env, only("/usr/bin/chromium"))).toThrow(/got \/not\/there/);
  });

  it("looks for each name in every folder of PATH before the next name", () => {
    const there = only("/a/google-chrome-stable", "/b/chromium-browser", "/c/chromium");
    expect(findChromium({ PATH: "/a:/b:/c" }, there)).toBe("/c/chromium");
    expect(findChromium({ PATH: "/a:/b" }, there)).toBe("/b/chromium-browser");
    expect(findChromium({ PATH: "/a" }, there)).toBe("/a/google-chrome-stable");
  });

  it("looks in the usual places when PATH is empty or missing", () => {
    expect(findChromium({ PATH: "" }, only("/snap/bin/chromium"))).toBe("/snap/bin/chromium");
    expect(findChromium({}, only("/usr/bin/chromium"))).toBe("/usr/bin/chromium");
  });

  it("never takes a program from the current folder because of an empty entry in PATH", () => {
    expect(findChromium({ PATH: ":/a:" }, only("chromium", "/chromium"))).toBeUndefined();
  });

  it("is undefined when there is none", () => {
    expect(findChromium({ PATH: "/a:/b" }, () => false)).toBeUndefined();
  });
});
