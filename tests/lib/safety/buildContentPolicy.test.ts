import { describe, expect, it } from "vitest";
import { buildContentPolicy } from "@/lib/safety/buildContentPolicy";

const nonce = "AAAAAAAAAAAAAAAAAAAAAA==";

/** The policy as a map from directive to its sources. */
function directives(policy: string): Map<string, string[]> {
  return new Map(
    policy.split("; ").map((line) => {
      const [name = "", ...sources] = line.split(" ");
      return [name, sources];
    }),
  );
}

describe("buildContentPolicy", () => {
  const built = directives(buildContentPolicy({ nonce, development: false }));

  it("trusts scripts by this request's nonce, and never inline code or eval", () => {
    expect(built.get("script-src")).toEqual(["'self'", `'nonce-${nonce}'`, "'strict-dynamic'"]);
  });

  it("takes styles from our own files or with the nonce, never from an attribute", () => {
    expect(built.get("style-src")).toEqual(["'self'", `'nonce-${nonce}'`]);
  });

  it.each([
    ["default-src", ["'self'"]],
    ["img-src", ["'self'", "data:", "blob:"]],
    ["font-src", ["'self'"]],
    ["connect-src", ["'self'"]],
    ["worker-src", ["'self'"]],
    ["object-src", ["'none'"]],
    ["base-uri", ["'none'"]],
    ["form-action", ["'self'"]],
    ["frame-ancestors", ["'none'"]],
  ])("sets %s to %j", (name, sources) => {
    expect(built.get(name)).toEqual(sources);
  });

  it("allows eval under the development server only", () => {
    expect(buildContentPolicy({ nonce, development: true })).toContain("'unsafe-eval'");
    expect(buildContentPolicy({ nonce, development: false })).not.toContain("unsafe");
  });

  it.each([
    "",
    "short",
    "AAAAAAAAAAAAAAAAAAAAA",
    `${nonce}'; script-src *`,
    `${nonce}\r\nX-Evil: 1`,
    "AAAAAAAAAAAAAAAAAAAAAA===",
    "AAAAAAAAAAA AAAAAAAAAAAA",
  ])("throws on the nonce %j, which is too short or could end the directive", (bad) => {
    expect(() => buildContentPolicy({ nonce: bad, development: false })).toThrow(RangeError);
  });
});
