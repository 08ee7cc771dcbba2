import { type ParseArgsConfig, parseArgs } from "node:util";
import { fail } from "../fail";

/** Reads a command's options and its one file; wrong use ends the command with its usage. */
export function readArguments<Options extends NonNullable<ParseArgsConfig["options"]>>(
  args: readonly string[],
  options: Options,
  usage: string,
) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    if (positionals.length > 1) fail(2, usage);
    return { values, file: positionals[0] };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return fail(2, `${error.message}; ${usage}`);
  }
}
