// @ts-check
import { createServer } from "node:net";

const highestPort = 65_535;

/**
 * The first port from the wanted one upward on which a server can listen.
 *
 * @param {number} wanted 1 to 65535
 * @param {(port: number) => Promise<boolean>} [isFree] asked of each port in turn; by default tries to listen there
 * @returns {Promise<number>}
 * @throws Error when every port up to 65535 is taken
 */
export async function findFreePort(wanted, isFree = canListen) {
  for (let port = wanted; port <= highestPort; port++) {
    if (await isFree(port)) return port;
  }
  throw new Error(
    `a port must be free; every one from ${wanted} to ${highestPort} is taken; set PORT to a lower one`,
  );
}

/**
 * @param {number} port
 * @returns {Promise<boolean>}
 */
function canListen(port) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once("error", () => resolve(false));
    server.listen({ port, host: "127.0.0.1", exclusive: true }, () => server.close(() => resolve(true)));
  });
}
