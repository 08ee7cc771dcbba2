/** Ends the command with one line on standard error: 1 the input is at fault, 2 wrong use. */
export function fail(code: 1 | 2, message: string): never {
  // A message that quotes the input may quote its line ends.
  process.stderr.write(`${message.replace(/\s*[\r\n]+\s*/g, " ")}\n`);
  process.exit(code);
}
