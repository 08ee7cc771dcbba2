import { describe, expect, it } from "vitest";
import { formatProblem } from "@/lib/document/contentProblem";

const problem = {
  file: "a.md",
  line: 7,
  field: "minutes",
  expected: "a number of 0 or more",
  received: "-5",
};

describe("a problem in one line", () => {
  it("says where, which field, what was found and what to write", () => {
    expect(formatProblem(problem)).toBe("a.md:7 minutes: found -5; write a number of 0 or more");
  });

  it("leaves out a line that cannot be named", () => {
    expect(formatProblem({ ...problem, line: 0 })).toBe(
      "a.md minutes: found -5; write a number of 0 or more",
    );
  });

  it("speaks of the file where no field is meant", () => {
    expect(formatProblem({ ...problem, field: "" })).toContain("a.md:7 the file: found");
  });
});
