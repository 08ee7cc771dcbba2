/** Writes a command's answer on standard output. */
export const printJson = (value: unknown) => process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
