import { describe, expect, it } from "vitest";
import { z } from "zod";
import { publishSchemas } from "@/lib/publishing/publishSchemas";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const schemas = publishSchemas(smallVocabulary);
const text = (name: string) => JSON.stringify(schemas.get(name));
/** The published form of a field that names entries of a kind. */
const fieldSchema = z.object({ type: z.literal("string"), enum: z.array(z.string()) });
const caseSchema = z.object({
  required: z.array(z.string()),
  properties: z.record(z.string(), z.unknown()),
  additionalProperties: z.unknown(),
});
const published = caseSchema.parse(schemas.get("case"));

describe("the published schemas", () => {
  it("are one for cases, lessons, learners, and one for each kind of vocabulary file", () => {
    expect([...schemas.keys()]).toEqual([
      "case",
      "shop",
      "lesson",
      "learner",
      "instruments",
      "parts",
      "checks",
      "causes",
      "repairs",
      "cautions",
      "sayings",
      "notes",
      "reading",
      "weights",
      "readingWeights",
      "declined-words",
    ]);
    for (const schema of schemas.values()) {
      expect(schema).toHaveProperty("$schema", "https://json-schema.org/draft/2020-12/schema");
    }
  });

  it("offer the ids that there are where a field names an entry", () => {
    expect(fieldSchema.parse(published.properties.instrument).enum).toEqual([
      ...smallVocabulary.instruments.keys(),
    ]);
    expect(fieldSchema.parse(published.properties.firstThought).enum).toEqual([
      "gummed-oil",
      "casing-dented",
    ]);
    expect(text("repairs")).toContain('"enum":["sharp-edges"]');
  });

  it("leave an id that names a new entry free", () => {
    expect(published.properties.id).toMatchObject({ type: "string", pattern: expect.any(String) });
    expect(published.properties.id).not.toHaveProperty("enum");
  });

  it("ask of a case only what has no default, and let unknown fields be", () => {
    expect([...published.required].sort()).toEqual([
      "complaint",
      "id",
      "instrument",
      "received",
      "status",
      "title",
    ]);
    expect(published.additionalProperties).not.toBe(false);
  });

  it("offer no choices where the vocabulary has no entry yet: a field that nothing could fill would help nobody", () => {
    const empty = publishSchemas({ ...smallVocabulary, cautions: new Map() });
    expect(JSON.stringify([...empty.values()])).not.toContain('"enum":[]');
  });

  it("keep to the words of JSON Schema: the mark by which the ids were filled in is gone", () => {
    for (const name of schemas.keys()) expect(text(name)).not.toMatch(/"names":"/);
  });
});
