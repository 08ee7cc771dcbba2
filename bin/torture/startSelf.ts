import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

/** Starts this command once more as a program of its own that saves. */
export function startSelf(args: readonly string[]): ChildProcess {
  const program = fileURLToPath(new URL("../torture.ts", import.meta.url));
  return spawn(process.execPath, ["--import", "tsx", program, ...args], {
    stdio: ["ignore", "pipe", "inherit"],
  });
}
