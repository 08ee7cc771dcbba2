/** Ends the command with one line on standard error: 1 the input is at fault, 2 wrong use. */
export function fail(code: 1 | 2, message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(code);
}
