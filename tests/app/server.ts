import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** The built app in its own process on a temporary copy of the content, with a browser to drive it. */
export type RunningApp = Readonly<{
  address: string;
  browser: Browser;
  content: string;
  /** Ends it; the content goes too, unless it is to be kept for another start. */
  stop: (options?: Readonly<{ keepContent?: boolean }>) => Promise<void>;
}>;

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-sync",
  "--no-first-run",
];

type Options = Readonly<{
  /** The content of an app that was started before; default a copy of what comes along. */
  content?: string;
  /** The day that the app takes it to be; default that of the clock. */
  today?: string;
}>;

/** Starts the built app on a port that is free and waits until it answers. */
export async function startApp({ content: given, today }: Options = {}): Promise<RunningApp> {
  const content = given ?? mkdtempSync(join(tmpdir(), "benchlore-"));
  if (given === undefined) cpSync("content", content, { recursive: true });
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", "0"],
    {
      env: {
        ...process.env,
        BENCHLORE_CONTENT: content,
        BENCHLORE_TODAY: today ?? "",
        NODE_ENV: "production",
      },
      stdio: ["ignore", "pipe", "ignore"],
    },
  );
  const address = await saidAddress(server);
  await untilItAnswers(address, server);
  const executablePath = process.env.CHROMIUM_PATH ?? "/usr/bin/chromium";
  const browser = await chromium.launch({ executablePath, args: flags });
  const stop: RunningApp["stop"] = async ({ keepContent = false } = {}) => {
    await browser.close();
    if (server.exitCode === null) {
      const ended = new Promise((resolve) => server.once("exit", resolve));
      server.kill("SIGTERM");
      await ended;
    }
    if (!keepContent) rmSync(content, { recursive: true, force: true });
  };
  return { address, browser, content, stop };
}

/** The address that the server says it listens at: it takes a free port, and no other server is taken for it. */
function saidAddress(server: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    server.stdout?.on("data", (piece) => {
      said += piece;
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (address !== undefined) resolve(address);
    });
    server.once("exit", (code) =>
      reject(
        new Error(`the server must say its address; it ended with ${code} after "${said}"; build first`),
      ),
    );
  });
}

async function untilItAnswers(address: string, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 240; attempt++) {
    if (server.exitCode !== null)
      throw new Error(`the server must stay up; it ended with ${server.exitCode}; build first`);
    const answer = await fetch(address).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error(`the server must answer at ${address}; it did not within a minute`);
}
