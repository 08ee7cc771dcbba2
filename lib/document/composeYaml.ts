import { Composer, type Document, Lexer, type LineCounter, Parser } from "yaml";

/** How deep lists and fields may lie in one another: far deeper than content ever is, far short of the call stack. Chosen. */
export const deepestNesting = 64;

/**
 * Composes YAML 1.2 (core schema) into documents, token by token, so that what is nested too deep is met before anything
 * that recurses through it: a few hundred thousand brackets would otherwise end the whole program.
 *
 * Whether keys are unique is left to the reader: the library compares each with all, which takes seconds for thousands.
 *
 * @param counter takes the beginning of every line
 * @returns the documents, as a rule one; or the offset at which the nesting passes `deepestNesting`
 */
export function composeYaml(
  text: string,
  counter: LineCounter,
): Readonly<{ documents: readonly Document.Parsed[] }> | Readonly<{ tooDeepAt: number }> {
  const parser = new Parser(counter.addNewLine);
  let tooDeepAt: number | undefined;
  function* tokens() {
    counter.addNewLine(0);
    for (const lexeme of new Lexer().lex(text)) {
      yield* parser.next(lexeme);
      if (isTooDeep(parser)) {
        tooDeepAt = parser.offset;
        return;
      }
    }
    yield* parser.end();
  }
  const composer = new Composer({ version: "1.2", schema: "core", uniqueKeys: false, strict: true });
  const documents = [...composer.compose(tokens(), true, text.length)];
  return tooDeepAt === undefined ? { documents } : { tooDeepAt };
}

const collections: readonly string[] = ["block-map", "block-seq", "flow-collection"];

const isTooDeep = ({ stack }: Parser) =>
  stack.length > deepestNesting &&
  stack.filter(({ type }) => collections.includes(type)).length > deepestNesting;
