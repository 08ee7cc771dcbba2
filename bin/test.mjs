// @ts-check
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { build } from "./setup/build.mjs";
import { chromium } from "./setup/chromium.mjs";
import { install } from "./setup/install.mjs";
import { projectRoot } from "./setup/projectRoot.mjs";
import { runLocal } from "./setup/runLocal.mjs";
import { say } from "./setup/say.mjs";
import { runCommand } from "./setup/startCommand.mjs";
import { stopWithParent } from "./setup/stopWithParent.mjs";
import { tallyResults } from "./setup/tallyResults.mjs";

stopWithParent();
process.env.NEXT_TELEMETRY_DISABLED = "1";

/** @type {import("./setup/tallyResults.mjs").Stage[]} */
const stages = [];

/**
 * Runs one stage; whether it fails or not, the next one runs too.
 *
 * @param {string} name
 * @param {() => Promise<number | void>} work gives an exit code; nothing means it went well
 */
async function stage(name, work) {
  process.stdout.write(`\n== ${name}\n`);
  const from = performance.now();
  let code = 1;
  try {
    code = (await work()) ?? 0;
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
  }
  const seconds = (performance.now() - from) / 1000;
  stages.push({ name, passed: code === 0, seconds });
  return code;
}

const reportFile = join(projectRoot, ".state", "vitest.json");
mkdirSync(join(projectRoot, ".state"), { recursive: true });
// A report left by an earlier run must never be counted as this one's.
rmSync(reportFile, { force: true });

await stage("install", () => install());
await stage("types", async () => (await runLocal("next", ["typegen"])) || runLocal("tsc", ["--noEmit"]));
await stage("lint", () => runLocal("biome", ["check", "."]));
await stage("dead code", () => runLocal("knip", []));
await stage("build", () => build());
await stage("content", () =>
  runCommand(process.execPath, [join(projectRoot, "bin", "run.mjs"), "check-content"], {
    cwd: projectRoot,
    shell: false,
    stdio: "inherit",
  }),
);
await stage("browser found", async () => {
  process.env.CHROMIUM_PATH = await chromium();
});
const testExitCode = await stage("tests", () =>
  runLocal("vitest", ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${reportFile}`]),
);

const report = existsSync(reportFile) ? JSON.parse(readFileSync(reportFile, "utf8")) : undefined;
const { passed, failed } = tallyResults(stages.slice(0, -1), report, testExitCode);

process.stdout.write("\n== summary\n");
for (const each of stages) {
  process.stdout.write(`${each.passed ? "passed" : "FAILED"}  ${each.name} (${each.seconds.toFixed(1)} s)\n`);
}
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
