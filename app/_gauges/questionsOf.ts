import { readSize, type SizeKind } from "@/lib/gauging/lengths/readSize";
import { splitLengths } from "@/lib/gauging/lengths/splitLengths";
import { type GaugesFields, gaugesHref, isLengthField, unitOf, withUnit } from "./gaugesFields";

/** A length that was not counted: why, and the pages on which it is written otherwise. */
export type Question = Readonly<{
  field: string;
  got: string;
  why: string;
  could: readonly Readonly<{ write: string; href: string }>[];
}>;

const fieldWords: Readonly<Record<string, string>> = {
  passes: "Plugs that pass",
  stops: "Plugs that stop",
  spasses: "Sibling, plugs that pass",
  sstops: "Sibling, plugs that stop",
  piston: "Piston",
  pm: "Give or take",
  depth: "Depth of the plugs",
  lpm: "Legs, give or take",
};

/** Every length on the page that has to be asked about, in the fields' order. */
export function questionsOf(fields: GaugesFields, path: string): readonly Question[] {
  return Object.entries(fields)
    .filter(([name]) => isLengthField(name))
    .flatMap(([name, text]) => {
      const lengths = splitLengths(text);
      return lengths.flatMap((length, index): Question[] => {
        const read = readSize(withUnit(length, unitOf(fields)), kindOf(name));
        if (read.kind === "length") return [];
        const rewrite = (write: string) =>
          gaugesHref({ ...fields, [name]: lengths.toSpliced(index, 1, write).join("; ") }, path);
        return [
          {
            field: wordsOf(name),
            got: read.got,
            why: read.kind === "question" ? read.why : `it is no length; write ${read.write}`,
            could:
              read.kind === "question"
                ? read.could.map(({ write }) => ({ write, href: rewrite(write) }))
                : [],
          },
        ];
      });
    });
}

function kindOf(name: string): SizeKind {
  if (name === "pm" || name === "lpm") return "uncertainty";
  if (/^l\dw$/.test(name)) return "across";
  return name === "depth" || /^[dl]\d$/.test(name) ? "depth" : "diameter";
}

function wordsOf(name: string): string {
  const [, leg, across] = /^l(\d)(w?)$/.exec(name) ?? [];
  if (leg !== undefined) return across ? `Legs, across at place ${leg}` : `Legs, place ${leg}`;
  const section = /^d(\d)(?:-(.+))?$/.exec(name);
  if (!section) return fieldWords[name] ?? name;
  return section[2] === undefined
    ? `Depth of section ${section[1]}`
    : `Section ${section[1]} at ${section[2]} degrees`;
}
