import { createServer } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { findFreePort } from "../../bin/setup/findFreePort.mjs";

describe("findFreePort", () => {
  const server = createServer();
  afterEach(() => {
    server.close();
  });

  it("keeps the wanted port when it is free", async () => {
    expect(await findFreePort(3170, async () => true)).toBe(3170);
  });

  it("goes upward to the first free one, asking each once", async () => {
    const asked: number[] = [];
    const isFree = async (port: number) => {
      asked.push(port);
      return port === 3173;
    };
    expect(await findFreePort(3170, isFree)).toBe(3173);
    expect(asked).toEqual([3170, 3171, 3172, 3173]);
  });

  it("fails with a remedy when all up to the highest are taken, and asks for none beyond", async () => {
    const asked: number[] = [];
    const isFree = async (port: number) => {
      asked.push(port);
      return false;
    };
    await expect(findFreePort(65_534, isFree)).rejects.toThrow(/set PORT to a lower one/);
    expect(asked).toEqual([65_534, 65_535]);
  });

  it("passes over a port on which another server really listens", async () => {
    const taken = await new Promise<number>((resolve, reject) => {
      server.listen(0, "127.0.0.1", () => {
        const address = server.address();
        if (address === null || typeof address === "string") reject(new Error("no port"));
        else resolve(address.port);
      });
    });
    expect(await findFreePort(taken)).toBeGreaterThan(taken);
  });
});
