// @ts-check
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { hashFiles } from "./hashFiles.mjs";
import { projectRoot } from "./projectRoot.mjs";
import { runLocal } from "./runLocal.mjs";
import { say } from "./say.mjs";
import { withLock } from "./withLock.mjs";

/** What a build is made from. Content is not among it: cases are read while the server runs. */
const sources = [
  "app",
  "lib",
  "public",
  "proxy.ts",
  "instrumentation.ts",
  "next.config.ts",
  "package-lock.json",
  "tsconfig.json",
];

/**
 * Sees to it that .next holds a build of the sources as they stand.
 *
 * @param {string} [root] the project's folder
 * @throws Error when the build failed twice
 */
export async function build(root = projectRoot) {
  if (isBuilt(root)) return;
  await withLock(join(root, ".state", "setup.lock"), async () => {
    if (isBuilt(root)) return;
    say("Building; this takes up to a minute and is done once for each change of the program.");
    if ((await buildOnce(root)) === 0) return;
    say("The build failed; trying once more from nothing, in case only its cache was at fault.");
    rmSync(join(root, ".next"), { recursive: true, force: true });
    const code = await buildOnce(root);
    if (code !== 0) {
      throw new Error(
        `the program must build; next build ended twice, the second time with code ${code}; mend what it reports above and run the same command again`,
      );
    }
  });
}

/** @param {string} root */
async function buildOnce(root) {
  rmSync(recordFile(root), { force: true });
  // Taken before the build, so that a file changed meanwhile brings another build and is not passed over.
  const hash = hashFiles(root, sources);
  const code = await runLocal("next", ["build"], {
    cwd: root,
    env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
    stdio: ["ignore", 2, 2],
  });
  if (code === 0) writeFileSync(recordFile(root), hash);
  return code;
}

/** @param {string} root */
const recordFile = (root) => join(root, ".next", "benchlore-sources");

/** @param {string} root */
function isBuilt(root) {
  return (
    existsSync(join(root, ".next", "BUILD_ID")) &&
    existsSync(recordFile(root)) &&
    readFileSync(recordFile(root), "utf8") === hashFiles(root, sources)
  );
}
