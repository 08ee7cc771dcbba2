// @ts-check
import { install } from "./setup/install.mjs";
import { projectRoot } from "./setup/projectRoot.mjs";
import { say } from "./setup/say.mjs";
import { runCommand } from "./setup/startCommand.mjs";
import { stopWithParent } from "./setup/stopWithParent.mjs";

const names = [
  "consult",
  "check-content",
  "evaluate",
  "schemas",
  "benchmarks",
  "gauge",
  "torture",
  "case",
  "export",
];

stopWithParent();

const [name, ...args] = process.argv.slice(2);

if (name === undefined || !names.includes(name)) {
  say(`a command must be one of ${names.join(", ")}; got ${name ?? "none"}; run node bin/run.mjs NAME ...`);
  process.exitCode = 2;
} else {
  try {
    await install();
    process.exitCode = await runCommand(
      process.execPath,
      ["--import", import.meta.resolve("tsx"), `${projectRoot}/bin/${name}.ts`, ...args],
      // tsx looks for tsconfig.json in the folder it was called from, which need not be the project's.
      {
        shell: false,
        stdio: "inherit",
        env: { ...process.env, TSX_TSCONFIG_PATH: `${projectRoot}/tsconfig.json` },
      },
    );
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    process.exitCode = 1;
  }
}
