import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

/** What a command left: its exit code and what it wrote. */
type Ran = Readonly<{ code: number | null; out: string; err: string }>;

const projectRoot = fileURLToPath(new URL("../..", import.meta.url));

/** Starting Node and loading the content takes a second or two, more where others are at work on the machine. */
export const commandTimeout = 90_000;

/** Runs `node bin/run.mjs` as somebody at a terminal would, with `content` as the content folder. */
export function runBenchlore(
  args: readonly string[],
  { input = "", content }: Readonly<{ input?: string; content?: string }> = {},
): Promise<Ran> {
  const { BENCHLORE_CONTENT: _, ...environment } = process.env;
  const child = spawn(process.execPath, ["bin/run.mjs", ...args], {
    cwd: projectRoot,
    env: content === undefined ? environment : { ...environment, BENCHLORE_CONTENT: content },
  });
  const out: Buffer[] = [];
  const err: Buffer[] = [];
  child.stdout.on("data", (data: Buffer) => out.push(data));
  child.stderr.on("data", (data: Buffer) => err.push(data));
  // A command that fails before it reads leaves a closed pipe behind.
  child.stdin.on("error", () => {});
  child.stdin.end(input);
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) =>
      resolve({ code, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() }),
    );
  });
}
