import fc from "fast-check";
import type { Attribute } from "@/lib/similarity/attribute";
import type { AttributeValue, Row } from "@/lib/similarity/row";
import { buildTaxonomy } from "@/lib/similarity/taxonomy";

// Random schemas, rows and queries. Values come from small sets so that ties and unknowns are common.

const weight = fc.oneof(
  fc.integer({ min: 0, max: 4 }),
  fc.double({ min: 0, max: 3, noNaN: true, noDefaultInfinity: true }),
);

const names = (prefix: string, count: number): string[] =>
  Array.from({ length: count }, (_, i) => `${prefix}${i}`);

/** A symmetric likeness with 1 on the diagonal, from one number a pair. */
function makeAlike(values: readonly string[], numbers: readonly number[]): (a: string, b: string) => number {
  return (a, b) => {
    if (a === b) return 1;
    const [low = 0, high = 0] = [values.indexOf(a), values.indexOf(b)].sort((x, y) => x - y);
    return numbers[(high * (high - 1)) / 2 + low] ?? 0;
  };
}

/** Up to 300 values, so that columns of two bytes a row come up too. */
const nominal = (name: string): fc.Arbitrary<Attribute> =>
  fc
    .record({
      weight,
      count: fc.oneof(fc.integer({ min: 1, max: 5 }), fc.constant(300)),
      numbers: fc.option(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 10, maxLength: 10 }),
      ),
    })
    .map(({ weight, count, numbers }) => {
      const values = names("v", count);
      const alike = numbers === null ? undefined : makeAlike(values, numbers);
      return { kind: "nominal", name, weight, values, alike };
    });

const ordinal = (name: string): fc.Arbitrary<Attribute> =>
  fc
    .record({ weight, count: fc.integer({ min: 1, max: 6 }) })
    .map(({ weight, count }) => ({ kind: "ordinal", name, weight, ranks: names("r", count) }));

const numeric = (name: string): fc.Arbitrary<Attribute> =>
  fc
    .record({ weight, tolerance: fc.double({ min: 0.1, max: 10, noNaN: true }) })
    .map(({ weight, tolerance }) => ({ kind: "numeric", name, weight, tolerance }));

/** Every node but the first chooses its parent among those before it, or is a root itself. */
const taxonomy = (name: string): fc.Arbitrary<Attribute> =>
  fc
    .record({ weight, parents: fc.array(fc.nat(8), { minLength: 1, maxLength: 9 }) })
    .map(({ weight, parents }) => {
      const nodes = parents.map((parent, i) => ({
        id: `n${i}`,
        parent: parent < i ? `n${parent}` : undefined,
      }));
      return { kind: "taxonomy", name, weight, taxonomy: buildTaxonomy(nodes) };
    });

const findings = (name: string): fc.Arbitrary<Attribute> =>
  fc
    .array(fc.record({ weight, count: fc.integer({ min: 1, max: 4 }), ordered: fc.boolean() }), {
      maxLength: 6,
    })
    .filter((keys) => keys.length > 0)
    .map((keys) => ({
      kind: "findings",
      name,
      keys: keys.map(({ weight, count, ordered }, i) => ({
        key: `k${i}`,
        weight,
        ordered,
        outcomes: names("o", count),
      })),
    }));

const text = (name: string): fc.Arbitrary<Attribute> =>
  weight.map((weight) => ({ kind: "text", name, weight }));

/** Schemas of 1 to 9 attributes. */
export const schemas: fc.Arbitrary<Attribute[]> = fc
  .array(fc.constantFrom(nominal, ordinal, numeric, taxonomy, findings, text), { minLength: 1, maxLength: 9 })
  .chain((makers) => fc.tuple(...makers.map((make, i) => make(`a${i}`))));

const numbers: fc.Arbitrary<AttributeValue> = fc.oneof(
  fc.integer({ min: 0, max: 9 }),
  fc.double({ min: -5, max: 15, noNaN: true }),
  fc
    .tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 4 }))
    .map(([low, width]) => ({ low, high: low + width })),
  fc.integer({ min: 0, max: 9 }).map((low) => ({ low, high: Number.POSITIVE_INFINITY })),
  fc.integer({ min: 0, max: 9 }).map((high) => ({ low: Number.NEGATIVE_INFINITY, high })),
);

function valuesOf(attribute: Attribute): fc.Arbitrary<AttributeValue> | undefined {
  switch (attribute.kind) {
    case "nominal":
      return fc.constantFrom(...attribute.values);
    case "ordinal":
      return fc.constantFrom(...attribute.ranks);
    case "taxonomy":
      return fc.constantFrom(...attribute.taxonomy.ids);
    case "numeric":
      return numbers;
    default:
      return undefined;
  }
}

/** What a case or a query of the schema may know; with `complete` it knows everything. */
export function knowledge(
  attributes: readonly Attribute[],
  complete = false,
): fc.Arbitrary<Pick<Row, "values" | "findings">> {
  const requiredKeys: [] | undefined = complete ? undefined : [];
  const values = attributes.flatMap((attribute) => {
    const value = valuesOf(attribute);
    return value === undefined ? [] : [[attribute.name, value] as const];
  });
  const outcomes = attributes.flatMap((attribute) => {
    if (attribute.kind !== "findings") return [];
    const keys = attribute.keys.map(({ key, outcomes }) => [key, fc.constantFrom(...outcomes)] as const);
    return [[attribute.name, fc.record(Object.fromEntries(keys), { requiredKeys })] as const];
  });
  return fc.record({
    values: fc.record(Object.fromEntries(values), { requiredKeys }),
    findings: fc.record(Object.fromEntries(outcomes), { requiredKeys }),
  });
}

const dates = fc.constantFrom("2021-05-04", "2022-01-31", "2023-11-11");

/** Rows of the schema with the ids c0, c1, ... in random order. */
export function rowsOf(
  attributes: readonly Attribute[],
  maxLength: number,
  complete = false,
): fc.Arbitrary<Row[]> {
  return fc
    .array(fc.record({ date: dates, known: knowledge(attributes, complete) }), { maxLength })
    .map((rows) => rows.map(({ date, known }, i) => ({ id: `c${i}`, date, ...known })))
    .chain((rows) => fc.shuffledSubarray(rows, { minLength: rows.length }));
}
