import { describe, expect, it } from "vitest";
import { tallyResults } from "../../bin/setup/tallyResults.mjs";

const good = { name: "types", passed: true, seconds: 1 };
const bad = { name: "lint", passed: false, seconds: 1 };
const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((each) => ({ status: each })),
});

describe("tallyResults", () => {
  it("counts each stage as one and each executed test as one", () => {
    const report = { testResults: [file("passed", "passed", "passed"), file("failed", "passed", "failed")] };
    expect(tallyResults([good, bad], report, 1)).toEqual({ passed: 4, failed: 2 });
  });

  it("is clean only when every stage and every test passed and the run ended well", () => {
    expect(tallyResults([good], { testResults: [file("passed", "passed")] }, 0)).toEqual({
      passed: 2,
      failed: 0,
    });
  });

  it("counts a run without any executed test as failed", () => {
    expect(tallyResults([good], { testResults: [] }, 0)).toEqual({ passed: 1, failed: 1 });
    expect(tallyResults([good], { testResults: [file("passed", "skipped", "todo")] }, 0)).toEqual({
      passed: 1,
      failed: 1,
    });
  });

  it("counts a run that left no report as failed, even if it ended well", () => {
    expect(tallyResults([good], undefined, 0)).toEqual({ passed: 1, failed: 1 });
    expect(tallyResults([], undefined, 1)).toEqual({ passed: 0, failed: 1 });
  });

  it("counts a test file that could not be loaded as one failure", () => {
    const report = { testResults: [file("passed", "passed"), file("failed")] };
    expect(tallyResults([good], report, 1)).toEqual({ passed: 2, failed: 1 });
  });

  it("counts a file once when only a hook in it failed", () => {
    const report = { testResults: [file("failed", "passed", "passed")] };
    expect(tallyResults([], report, 1)).toEqual({ passed: 2, failed: 1 });
  });

  it("counts a bad end as a failure although every test in the report passed", () => {
    expect(tallyResults([good], { testResults: [file("passed", "passed")] }, 1)).toEqual({
      passed: 2,
      failed: 1,
    });
  });

  it("leaves skipped tests out of both numbers", () => {
    const report = { testResults: [file("passed", "passed", "skipped")] };
    expect(tallyResults([], report, 0)).toEqual({ passed: 1, failed: 0 });
  });
});
