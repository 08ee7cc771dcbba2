import { describe, expect, it } from "vitest";
import { packagesAgree } from "../../bin/setup/packagesAgree.mjs";

const first = { version: "1.0.0", integrity: "sha512-a" };
const second = { version: "2.0.0", integrity: "sha512-b" };
const wanted = {
  packages: {
    "": { version: "0.1.0" },
    "node_modules/first": first,
    "node_modules/second": second,
    "node_modules/other-machine": { ...first, optional: true },
  },
};

describe("packagesAgree", () => {
  it("holds when every package is there in the version asked for, the optional ones aside", () => {
    const present = { packages: { "node_modules/first": first, "node_modules/second": second } };
    expect(packagesAgree(wanted, present)).toBe(true);
  });

  it.each([
    ["one is missing", { "node_modules/first": first }],
    ["one is left over", { ...wanted.packages, "node_modules/old": first }],
    ["a version differs", { ...wanted.packages, "node_modules/first": { ...first, version: "1.0.1" } }],
    ["the bytes differ", { ...wanted.packages, "node_modules/first": { ...first, integrity: "sha512-z" } }],
    ["an optional one differs", { ...wanted.packages, "node_modules/other-machine": second }],
    ["nothing is there", {}],
  ])("does not hold when %s", (_, packages) => {
    expect(packagesAgree(wanted, { packages })).toBe(false);
  });

  it("does not hold when a record is empty or not a lock file", () => {
    expect(packagesAgree({}, {})).toBe(false);
    expect(packagesAgree(wanted, {})).toBe(false);
    expect(packagesAgree({}, wanted)).toBe(false);
  });
});
