import { type Document, isCollection, isNode, isPair, isScalar, LineCounter, visit } from "yaml";
import { composeYaml, deepestNesting } from "./composeYaml";
import type { ContentProblem } from "./contentProblem";
import { dangerousKeys } from "./dangerousKeys";
import { showValue } from "./showValue";

/** A YAML text that was read: its data, and the line that each field stands on. */
export type YamlReading = Readonly<{
  data: unknown;
  /** Line of the field at this path, from 1 in the file; the nearest parent's line where the field is missing. */
  lineOf: (path: readonly PropertyKey[]) => number;
  problems: readonly ContentProblem[];
}>;

/**
 * Reads YAML 1.2 (core schema): plain data only.
 * Refused: tags that ask for code or types, aliases, double keys, keys that reach into JavaScript's objects or are no
 * words, and anything nested more than 64 deep.
 *
 * @param firstLine line of the file on which the text begins, from 1
 * @returns data where there are no problems; all problems at once otherwise
 * Source: YAML 1.2.2, sections 3.2.1 (unique keys) and 10.3 (core schema).
 */
export function readAnyYaml(text: string, file: string, firstLine = 1): YamlReading {
  const counter = new LineCounter();
  const lineAt = (offset: number) => counter.linePos(offset).line + firstLine - 1;
  const problems: ContentProblem[] = [];
  const refuse = (offset: number, received: string, expected: string) =>
    problems.push({ file, line: lineAt(offset), field: "", received, expected });

  const composed = composeYaml(text, counter);
  if ("tooDeepAt" in composed) {
    const deep = `${deepestNesting} deep`;
    refuse(composed.tooDeepAt, `lists or fields more than ${deep}`, `them at most ${deep} in one another`);
    return { data: undefined, problems, lineOf: () => lineAt(composed.tooDeepAt) };
  }
  const [document, second] = composed.documents;
  if (!document) return { data: null, problems, lineOf: () => firstLine };
  for (const { pos, code, message } of [...document.errors, ...document.warnings]) {
    refuse(pos[0], `YAML that cannot be read (${showValue(message)})`, remedy(code));
  }
  if (second)
    refuse(second.range[0], "a second document", "one set of fields, with no '...' or '---' among them");
  visit(document, {
    Alias: (_, node) => void refuse(node.range?.[0] ?? 0, `the alias *${node.source}`, "the value itself"),
    Map: (_, { items }) => {
      const seen = new Set<string>();
      for (const { key } of items) {
        if (!isScalar(key)) continue;
        const name = String(key.value);
        if (seen.has(name))
          refuse(key.range?.[0] ?? 0, `the field ${showValue(name)} a second time`, "each field once");
        seen.add(name);
      }
    },
    Pair: (_, { key }) => {
      if (isScalar(key) && dangerousKeys.has(String(key.value))) {
        refuse(key.range?.[0] ?? 0, `the key ${String(key.value)}`, "another name for this field");
      }
      if (isCollection(key)) refuse(key.range?.[0] ?? 0, "a list or fields as a key", "a word as the key");
    },
  });
  const data: unknown = problems.length === 0 ? document.toJS({ maxAliasCount: 0 }) : undefined;
  return { data, problems, lineOf: (path) => lineAt(offsetOf(document, path)) };
}

function offsetOf(document: Document.Parsed, path: readonly PropertyKey[]): number {
  for (let depth = path.length; depth > 0; depth--) {
    const keys = path.slice(0, depth).map((key) => (typeof key === "symbol" ? String(key) : key));
    const node = document.getIn(keys, true);
    if (isNode(node) && node.range) return node.range[0];
    if (isPair(node) && isNode(node.key) && node.key.range) return node.key.range[0];
  }
  return document.contents?.range?.[0] ?? 0;
}

function remedy(code: string): string {
  switch (code) {
    case "TAB_AS_INDENT":
      return "spaces where the tab stands";
    case "TAG_RESOLVE_FAILED":
      return "a plain value with no ! tag";
    case "MISSING_CHAR":
    case "BAD_COLLECTION_TYPE":
      return "the missing quote or bracket";
    default:
      return "plain YAML: 'field: value' lines, text with a colon in quotes";
  }
}
