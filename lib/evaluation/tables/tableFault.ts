import { formatProblem } from "../../document/contentProblem";

/** What is wrong with a data or fold file; the message is one line: where, what was found, what to write. */
export class TableFault extends Error {
  override readonly name = "TableFault";

  /**
   * @param line from 1; 0 where no line can be named
   * @param field what of the file is at fault; empty for the file as a whole
   */
  constructor(file: string, line: number, field: string, received: string, expected: string) {
    super(formatProblem({ file, line, field, received, expected }));
  }
}
