import { spawn } from "node:child_process";
import { findFreePort } from "@/bin/setup/findFreePort.mjs";

/** The built app in a process of its own. */
export type ServedApp = Readonly<{
  /** Asks for a page, as a browser on which `learner` said who they are; throws where the answer is not 200. */
  ask: (
    path: string,
    options?: Readonly<{ learner?: string }>,
  ) => Promise<Readonly<{ ms: number; text: string }>>;
  stop: () => Promise<void>;
}>;

const firstPort = 3600;
/** Many cases take their time to be read for the first time. */
const mostWaitMs = 120_000;
const pauseMs = 250;

/** Starts the built app over some content and waits until it answers. */
export async function serveApp({
  content,
  today,
}: Readonly<{ content: string; today: string }>): Promise<ServedApp> {
  const port = await findFreePort(firstPort);
  const address = `http://127.0.0.1:${port}`;
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(port)],
    {
      env: {
        ...process.env,
        BENCHLORE_CONTENT: content,
        BENCHLORE_CACHE: "none",
        BENCHLORE_TODAY: today,
        NODE_ENV: "production",
      },
      stdio: "ignore",
    },
  );
  const ask: ServedApp["ask"] = async (path, { learner } = {}) => {
    const start = performance.now();
    const answer = await fetch(address + path, { headers: learner ? { cookie: `learner=${learner}` } : {} });
    const text = await answer.text();
    if (answer.status !== 200) throw new Error(`${path} must answer with 200; got ${answer.status}`);
    return { ms: performance.now() - start, text };
  };
  const until = performance.now() + mostWaitMs;
  while (!(await ask("/study").catch(() => undefined))) {
    if (server.exitCode !== null || performance.now() > until)
      throw new Error("the built app must answer; it does not; run npm run build first");
    await new Promise((go) => setTimeout(go, pauseMs));
  }
  const stop = async () => {
    const ended = new Promise((gone) => server.once("exit", gone));
    server.kill("SIGTERM");
    await ended;
  };
  return { ask, stop };
}
