const ownHost = /^(?:127\.0\.0\.1|localhost|\[::1\])(?::(?<port>[1-9]\d{0,4}))?$/i;

const highestPort = 65_535;

/**
 * Whether a Host header names this machine's own loopback address, in one of the three ways a browser writes it.
 *
 * A page elsewhere can point its own name at 127.0.0.1 and so reach a server that only listens here; the browser
 * still sends that page's name as Host, which is why the name is compared whole and never parsed or trimmed.
 * Upper case is let through because host names do not know case; a trailing dot is not, since no browser
 * writes one unless it was asked to.
 *
 * @param host the Host header as received, or null when there is none
 * @returns true for `127.0.0.1`, `localhost` or `[::1]`, each with or without a port of 1 to 65535
 * Source: RFC 9110, section 7.2 (Host) and section 4.2.3 (case of host names).
 */
export function isOwnHost(host: string | null): boolean {
  const found = host === null ? null : ownHost.exec(host);
  if (found === null) return false;
  const port = found.groups?.port;
  return port === undefined || Number(port) <= highestPort;
}
