import { afterEach, describe, expect, it, vi } from "vitest";

/** Each test loads the module anew: once it has been told to stop, it stays so. */
async function load() {
  vi.resetModules();
  return import("../../bin/setup/startCommand.mjs");
}

const node = (script: string): [string, string[]] => [process.execPath, ["-e", script]];

afterEach(() => {
  vi.restoreAllMocks();
});

describe("startCommand", () => {
  it("gives the program's own exit code", async () => {
    const { runCommand } = await load();
    expect(await runCommand(...node("process.exit(7)"))).toBe(7);
    expect(await runCommand(...node(""))).toBe(0);
  });

  it("gives 128 and the signal's number when a signal ended it", async () => {
    const { runCommand } = await load();
    expect(await runCommand(...node("process.kill(process.pid, 'SIGKILL')"))).toBe(128 + 9);
  });

  it("gives 127 and says so when there is no such program", async () => {
    const said = vi.spyOn(process.stderr, "write").mockReturnValue(true);
    const { runCommand } = await load();
    expect(await runCommand("/not/there/at-all", [])).toBe(127);
    expect(said.mock.calls.join()).toContain("/not/there/at-all could not be started");
  });

  it("ends what still runs when told to stop, and begins no next step", async () => {
    const { runCommand, stopCommands } = await load();
    let next = false;
    runCommand(...node("setTimeout(() => {}, 60_000)")).then(() => {
      next = true;
    });
    expect(await stopCommands()).toBe(128 + 15);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(next).toBe(false);
  });

  it("has no exit code to give when nothing was running", async () => {
    const { stopCommands } = await load();
    expect(await stopCommands()).toBeUndefined();
  });
});
