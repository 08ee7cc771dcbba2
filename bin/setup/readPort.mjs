// @ts-check

/** Chosen: free on a usual machine, and not one of the ports that other development servers take by default. */
const usualPort = 3170;

/**
 * The port that was asked for.
 *
 * @param {string | undefined} text the PORT setting; unset or empty means 3170
 * @returns {number} 1 to 65535
 * @throws RangeError for anything that is not such a whole number
 */
export function readPort(text) {
  if (text === undefined || text === "") return usualPort;
  const port = Number(text);
  if (/^\d+$/.test(text) && port >= 1 && port <= 65_535) return port;
  throw new RangeError(
    `PORT must be a whole number from 1 to 65535; got ${JSON.stringify(text)}; set another, or leave it out for ${usualPort}`,
  );
}
