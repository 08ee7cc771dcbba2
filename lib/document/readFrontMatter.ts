import matter from "gray-matter";
import type { ContentProblem } from "./contentProblem";
import type { YamlReading } from "./readAnyYaml";
import { readYaml } from "./readYaml";
import { showValue } from "./showValue";

/** A Markdown file taken apart: the front matter's YAML and the text below it. */
export type FrontMatterReading = YamlReading & Readonly<{ body: string }>;

/** Largest content file that is read, in characters: a case is a page or two, not a book. */
export const longestFile = 1_000_000;

/**
 * Takes a Markdown file apart into front matter and body.
 * The front matter must be YAML between two `---` lines; any other language is refused before it is looked at.
 * A byte-order mark is dropped, and every kind of line end is taken for the plain one.
 *
 * @returns data and body, or all problems with their lines
 */
export function readFrontMatter(text: string, file: string): FrontMatterReading {
  const whole = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const fault = outerFault(whole);
  if (fault)
    return { data: undefined, body: "", lineOf: () => fault.line, problems: [{ file, field: "", ...fault }] };

  let reading: YamlReading | undefined;
  const refuse = () => {
    throw new Error("front matter must be YAML");
  };
  const parsed = matter(whole, {
    language: "yaml",
    engines: {
      yaml: {
        parse: (yaml) => {
          reading = readYaml(yaml.replace(/^\n/, ""), file, 2);
          return {};
        },
        stringify: refuse,
      },
      javascript: { parse: refuse, stringify: refuse },
      json: { parse: refuse, stringify: refuse },
    },
  });
  reading ??= readYaml("", file, 2);
  return { ...reading, body: parsed.content.trim() };
}

type OuterFault = Omit<ContentProblem, "file" | "field">;

function outerFault(text: string): OuterFault | undefined {
  if (text.trim() === "") {
    return {
      line: 1,
      received: "an empty file",
      expected: "a line '---', the fields, a line '---', then the story",
    };
  }
  if (text.length > longestFile) {
    return {
      line: 1,
      received: `${text.length} characters`,
      expected: `at most ${longestFile} characters a file`,
    };
  }
  if (text.includes("\0")) return { line: 1, received: "a zero byte", expected: "plain text" };
  const lines = text.split("\n");
  const first = lines[0]?.trimEnd() ?? "";
  if (first !== "---") {
    return first.startsWith("---") && first.length > 3
      ? {
          line: 1,
          received: showValue(first),
          expected: "'---' alone: front matter is YAML and never runs code",
        }
      : { line: 1, received: showValue(first), expected: "'---' as the first line, before the fields" };
  }
  const end = lines.findIndex((line, index) => index > 0 && line.startsWith("---"));
  if (end < 0) {
    return { line: lines.length, received: "no second '---' line", expected: "'---' after the last field" };
  }
  const last = lines[end]?.trimEnd() ?? "";
  return last === "---"
    ? undefined
    : { line: end + 1, received: showValue(last), expected: "'---' alone after the last field" };
}
