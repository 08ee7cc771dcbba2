import { readPlainYaml } from "./plain/readPlainYaml";
import { readAnyYaml, type YamlReading } from "./readAnyYaml";

/**
 * Reads YAML 1.2 (core schema) by the rules of `readAnyYaml`. Nearly all case files and the vocabulary are written plainly: those are
 * read the short way, about ten times as fast, and which line a field stands on is found out when somebody asks, by the long one.
 *
 * @param firstLine line of the file on which the text begins, from 1
 * @returns data where there are no problems; all problems at once otherwise
 */
export function readYaml(text: string, file: string, firstLine = 1): YamlReading {
  const plain = readPlainYaml(text);
  if (plain === undefined) return readAnyYaml(text, file, firstLine);
  let whole: YamlReading | undefined;
  return {
    data: plain,
    problems: [],
    lineOf: (path) => {
      whole ??= readAnyYaml(text, file, firstLine);
      return whole.lineOf(path);
    },
  };
}
