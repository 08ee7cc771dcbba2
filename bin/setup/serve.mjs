// @ts-check
import { get } from "node:http";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { say } from "./say.mjs";
import { startCommand } from "./startCommand.mjs";

const lookEveryMs = 50;

/**
 * Serves the built program on this machine alone until it ends.
 *
 * @param {object} settings
 * @param {string} settings.root the project's folder
 * @param {number} settings.port
 * @param {(address: string) => void} settings.onAnswer called once, when the server answers
 * @returns {Promise<{ code: number, answered: boolean }>} the server's exit code, and whether it ever answered
 */
export async function serve({ root, port, onAnswer }) {
  const { child, ended } = startCommand(
    process.execPath,
    [
      "--import",
      new URL("./endWithStarter.mjs", import.meta.url).href,
      join(root, "node_modules", "next", "dist", "bin", "next"),
      ...["start", "-H", "127.0.0.1", "-p", String(port)],
    ],
    {
      cwd: root,
      shell: false,
      stdio: ["ignore", "pipe", "inherit", "ipc"],
      env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
    },
  );
  // The server's greeting is held back, since the address is said once and by us; it is shown when the start fails.
  let answered = false;
  let greeting = "";
  child.stdout?.setEncoding("utf8").on("data", (text) => {
    if (answered) process.stderr.write(text);
    else greeting += text;
  });
  let over = false;
  const code = ended.then((each) => {
    over = true;
    return each;
  });
  const address = `http://127.0.0.1:${port}`;
  while (!over) {
    const status = await askStatus(address);
    // Read anew: the server may have ended while it was asked, and somebody else have answered.
    if (status !== undefined && child.exitCode === null && child.signalCode === null) {
      answered = true;
      if (status >= 500)
        say(`The first page answers with an error (status ${status}); what went wrong stands above.`);
      onAnswer(address);
      break;
    }
    await wait(lookEveryMs);
  }
  const last = await code;
  if (!answered) process.stderr.write(greeting);
  return { code: last, answered };
}

/**
 * @param {string} address
 * @returns {Promise<number | undefined>} the status of the first page, undefined while nothing answers
 */
function askStatus(address) {
  return new Promise((resolve) => {
    get(address, (response) => {
      response.resume();
      response.once("end", () => resolve(response.statusCode));
    }).once("error", () => resolve(undefined));
  });
}
