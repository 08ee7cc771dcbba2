import { describe, expect, it } from "vitest";
import { isOwnHost } from "@/lib/safety/isOwnHost";

describe("isOwnHost", () => {
  it.each([
    "127.0.0.1",
    "127.0.0.1:3170",
    "localhost",
    "localhost:1",
    "localhost:65535",
    "[::1]",
    "[::1]:3170",
    "LOCALHOST:3170",
  ])("takes %j for this machine", (host) => {
    expect(isOwnHost(host)).toBe(true);
  });

  it.each([
    null,
    "",
    " ",
    "evil.test",
    "127.0.0.1.evil.test",
    "127.0.0.1.evil.test:3170",
    "localhost.evil.test",
    "evil-localhost",
    "localhost@evil.test",
    "localhost@evil",
    "localhost:3170@evil.test",
    "evil.test#localhost",
    "localhost/evil.test",
    "127.0.0.1, evil.test",
    "evil.test, 127.0.0.1",
    "localhost localhost",
    "localhost.",
    "127.0.0.1.",
    "localhost.:3170",
    " localhost",
    "localhost ",
    "localhost\n",
    "localhost\nevil.test",
    "evil.test\nlocalhost",
    "localhost:",
    "localhost:0",
    "localhost:00080",
    "localhost:65536",
    "localhost:80:80",
    "localhost:3170x",
    "localhost:-1",
    "127.0.0.2",
    "0.0.0.0",
    "127.1",
    "2130706433",
    "0x7f.0.0.1",
    "127.0.0.1\u0000",
    "127x0x0x1",
    "::1",
    "[::]",
    "[::1",
    "[::ffff:127.0.0.1]",
    "ⅼocalhost",
  ])("refuses %j", (host) => {
    expect(isOwnHost(host)).toBe(false);
  });
});
