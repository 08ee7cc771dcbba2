import {
  type Document,
  isCollection,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  parseDocument,
  visit,
} from "yaml";
import type { ContentProblem } from "./contentProblem";
import { showValue } from "./showValue";

/** A YAML text that was read: its data, and the line that each field stands on. */
export type YamlReading = Readonly<{
  data: unknown;
  /** Line of the field at this path, from 1 in the file; the nearest parent's line where the field is missing. */
  lineOf: (path: readonly PropertyKey[]) => number;
  problems: readonly ContentProblem[];
}>;

const dangerousKeys = new Set(["__proto__", "constructor", "prototype"]);

/** How deep lists and fields may lie in one another: far deeper than content ever is, far short of the call stack. Chosen. */
const deepestNesting = 64;

/**
 * Reads YAML 1.2 (core schema): plain data only.
 * Refused: tags that ask for code or types, aliases, double keys, keys that reach into JavaScript's objects or are no
 * words, and anything nested more than 64 deep.
 *
 * @param firstLine line of the file on which the text begins, from 1
 * @returns data where there are no problems; all problems at once otherwise
 * Source: YAML 1.2.2, sections 3.2.1 (unique keys) and 10.3 (core schema).
 */
export function readYaml(text: string, file: string, firstLine = 1): YamlReading {
  const counter = new LineCounter();
  const document = parseDocument(text, {
    version: "1.2",
    schema: "core",
    uniqueKeys: true,
    strict: true,
    lineCounter: counter,
    prettyErrors: false,
  });
  const lineAt = (offset: number) => counter.linePos(offset).line + firstLine - 1;
  const found = [...document.errors, ...document.warnings];
  const problems: ContentProblem[] = found.map((error) => ({
    file,
    line: lineAt(error.pos[0]),
    field: "",
    expected: remedy(error.code),
    received: `YAML that cannot be read (${showValue(error.message)})`,
  }));
  const refuse = (offset: number, received: string, expected: string) =>
    problems.push({ file, line: lineAt(offset), field: "", received, expected });
  const refuseDepth = (offset: number) =>
    refuse(
      offset,
      `lists or fields more than ${deepestNesting} deep`,
      `them at most ${deepestNesting} deep in one another`,
    );
  const lineOf = (path: readonly PropertyKey[]) => lineAt(offsetOf(document, path));
  const exhausted = found.find(({ code }) => code === "RESOURCE_EXHAUSTION");
  if (exhausted) {
    problems.length = 0;
    refuseDepth(exhausted.pos[0]);
    return { data: undefined, problems, lineOf };
  }
  visit(document, {
    Alias: (_, node) => void refuse(node.range?.[0] ?? 0, `the alias *${node.source}`, "the value itself"),
    Pair: (_, pair) => {
      const key = isScalar(pair.key) ? pair.key : undefined;
      if (key && dangerousKeys.has(String(key.value))) {
        refuse(key.range?.[0] ?? 0, `the key ${String(key.value)}`, "another name for this field");
      }
      if (isCollection(pair.key))
        refuse(pair.key.range?.[0] ?? 0, "a list or fields as a key", "a word as the key");
    },
    Collection: (_, node, parents) => {
      if (parents.filter(isCollection).length < deepestNesting) return undefined;
      refuseDepth(node.range?.[0] ?? 0);
      return visit.BREAK;
    },
  });
  const data: unknown = problems.length === 0 ? document.toJS({ maxAliasCount: 0 }) : undefined;
  return { data, problems, lineOf };
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
    case "DUPLICATE_KEY":
      return "each field once";
    case "TAG_RESOLVE_FAILED":
      return "a plain value with no ! tag";
    case "MISSING_CHAR":
    case "BAD_COLLECTION_TYPE":
      return "the missing quote or bracket";
    default:
      return "plain YAML: 'field: value' lines, text with a colon in quotes";
  }
}
