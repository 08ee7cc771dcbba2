import type { Attribute } from "@/lib/similarity/attribute";
import type { Query, Row } from "@/lib/similarity/row";
import type { Random } from "./random";

/** What the engine's table is made of: so many attributes of a kind, and findings of which a row knows a few. */
export type EngineShape = Readonly<{ nominal: number; ordinal: number; numeric: number }>;

const values = ["a", "b", "c", "d", "e", "f", "g", "h"];
const ranks = ["1", "2", "3", "4", "5"];
const outcomes = ["sound", "slight", "bad"];
const keys = Array.from({ length: 300 }, (_, at) => `check-${at}`);
const knownKeys = 12;
/** As many different ones are shared among the rows: a million objects of findings would fill the memory. */
const findingSets = 5000;
/** Share of the cells that a row does not know. */
const unknown = 0.2;
const days = Array.from({ length: 365 }, (_, at) =>
  new Date(Date.UTC(2024, 0, 1 + at)).toISOString().slice(0, 10),
);

const findingsName = "findings";

/** The schema of a shape; weights differ so that no two attributes can stand for one another. */
export function engineAttributes({ nominal, ordinal, numeric }: EngineShape): Attribute[] {
  const weight = (at: number) => 0.5 + (at % 7) / 4;
  return [
    ...Array.from(
      { length: nominal },
      (_, at): Attribute => ({ kind: "nominal", name: `nominal-${at}`, weight: weight(at), values }),
    ),
    ...Array.from(
      { length: ordinal },
      (_, at): Attribute => ({ kind: "ordinal", name: `ordinal-${at}`, weight: weight(at + 3), ranks }),
    ),
    ...Array.from(
      { length: numeric },
      (_, at): Attribute => ({
        kind: "numeric",
        name: `numeric-${at}`,
        weight: weight(at + 5),
        tolerance: 2,
      }),
    ),
    {
      kind: "findings",
      name: findingsName,
      keys: keys.map((key, at) => ({ key, weight: weight(at), outcomes, ordered: at % 2 === 0 })),
    },
  ];
}

/** Draws rows of a schema of `engineAttributes`. */
export function drawRows(attributes: readonly Attribute[], count: number, random: Random): Row[] {
  const pool = Array.from({ length: findingSets }, () => drawFindings(random));
  return Array.from({ length: count }, (_, at) => ({
    id: `row-${String(at).padStart(8, "0")}`,
    date: random.pick(days) ?? "2024-01-01",
    values: drawValues(attributes, random, unknown),
    findings: random.pick(pool) ?? {},
  }));
}

/** Draws what is asked: every attribute, and as many findings as a row has. */
export const drawQueries = (attributes: readonly Attribute[], count: number, random: Random): Query[] =>
  Array.from({ length: count }, () => ({
    values: drawValues(attributes, random, 0),
    findings: drawFindings(random),
  }));

/** Every attribute has its place in every row, known or not: rows of one make are read fastest and take the least memory. */
function drawValues(attributes: readonly Attribute[], random: Random, missing: number): Row["values"] {
  const drawn: Record<string, string | number | undefined> = {};
  for (const attribute of attributes) {
    if (attribute.kind === "findings") continue;
    const value =
      attribute.kind === "numeric"
        ? random.whole(0, 1000) / 100
        : (random.pick(attribute.kind === "ordinal" ? ranks : values) ?? "a");
    drawn[attribute.name] = random.chance(missing) ? undefined : value;
  }
  return drawn;
}

function drawFindings(random: Random): Row["findings"] {
  const drawn: Record<string, string> = {};
  for (let at = 0; at < knownKeys; at += 1) drawn[random.pick(keys) ?? ""] = random.pick(outcomes) ?? "sound";
  return { [findingsName]: drawn };
}
