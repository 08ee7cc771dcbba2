// @ts-check

/** @typedef {{ name: string, passed: boolean, seconds: number }} Stage */
/**
 * The part of vitest's JSON report that is read.
 * @typedef {{ testResults: { status: string, assertionResults: { status: string }[] }[] }} TestReport
 */

/**
 * What passed and what failed, stages and single tests together.
 *
 * A stage counts as one. A test counts as one when it was executed. A test file that failed without a failing test
 * in it (it could not be loaded, or a hook threw) counts as one failure. Two more failures can be added, so that
 * nothing passes by not running: one when no test was executed at all, or when the test run itself ended badly
 * although every test in its report passed.
 *
 * @param {readonly Stage[]} stages every stage but the tests
 * @param {TestReport | undefined} report undefined when the test run left none
 * @param {number} testExitCode the test run's own exit code
 * @returns {{ passed: number, failed: number }}
 */
export function tallyResults(stages, report, testExitCode) {
  const files = report?.testResults ?? [];
  const tests = files.flatMap((file) => file.assertionResults.map(({ status }) => status));
  const passedTests = tests.filter((status) => status === "passed").length;
  const failedTests = tests.filter((status) => status === "failed").length;
  const failedFiles = files.filter(
    (file) => file.status === "failed" && file.assertionResults.every(({ status }) => status !== "failed"),
  ).length;
  const reported = failedTests + failedFiles;
  const unreported = reported === 0 && (passedTests === 0 || testExitCode !== 0) ? 1 : 0;
  const passedStages = stages.filter(({ passed }) => passed).length;
  return {
    passed: passedStages + passedTests,
    failed: stages.length - passedStages + reported + unreported,
  };
}
