// @ts-check

/**
 * Writes one line to standard error; standard output is kept for answers.
 *
 * @param {string} line
 */
export function say(line) {
  process.stderr.write(`${line}\n`);
}
