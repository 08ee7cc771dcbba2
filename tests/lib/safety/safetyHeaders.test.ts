import { describe, expect, it } from "vitest";
import { safetyHeaders } from "@/lib/safety/safetyHeaders";

describe("safetyHeaders", () => {
  it("keeps the referrer policy one under which our own forms still send their Origin", () => {
    expect(safetyHeaders["Referrer-Policy"]).toBe("same-origin");
  });

  it("forbids guessing types, and sharing a window or a file with other origins", () => {
    expect(safetyHeaders["X-Content-Type-Options"]).toBe("nosniff");
    expect(safetyHeaders["Cross-Origin-Opener-Policy"]).toBe("same-origin");
    expect(safetyHeaders["Cross-Origin-Resource-Policy"]).toBe("same-origin");
  });

  it("switches every listed ability off for every page", () => {
    const listed = (safetyHeaders["Permissions-Policy"] ?? "").split(", ");
    expect(listed).toContain("camera=()");
    expect(listed).toContain("geolocation=()");
    expect(listed.every((each) => /^[a-z-]+=\(\)$/.test(each))).toBe(true);
  });
});
