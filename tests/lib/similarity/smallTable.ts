import type { Attribute } from "@/lib/similarity/attribute";
import type { Row } from "@/lib/similarity/row";
import { buildTaxonomy } from "@/lib/similarity/taxonomy";

/** A small schema with one attribute of each kind; its numbers can be checked by hand. */
export const attributes: readonly Attribute[] = [
  { kind: "nominal", name: "material", weight: 1, values: ["brass", "nickel", "monel"] },
  { kind: "ordinal", name: "drag", weight: 2, ranks: ["free", "drags", "sticks"] },
  { kind: "numeric", name: "stroke", weight: 1, tolerance: 4, unit: "mm" },
  {
    kind: "taxonomy",
    name: "part",
    weight: 3,
    taxonomy: buildTaxonomy([
      { id: "valve" },
      { id: "piston", parent: "valve" },
      { id: "casing", parent: "valve" },
      { id: "spring", parent: "piston" },
    ]),
  },
  {
    kind: "findings",
    name: "checks",
    keys: [
      { key: "swap", weight: 2, outcomes: ["follows-piston", "follows-casing"], ordered: false },
      { key: "wear", weight: 1, outcomes: ["none", "some", "much"], ordered: true },
    ],
  },
  { kind: "text", name: "story", weight: 1 },
];

/** Three cases that differ in what they know. */
export const rows: readonly Row[] = [
  {
    id: "first",
    date: "2024-01-01",
    values: { material: "brass", drag: "free", stroke: 16, part: "piston" },
    findings: { checks: { swap: "follows-piston", wear: "none" } },
  },
  {
    id: "second",
    date: "2024-02-01",
    values: { material: "nickel", drag: "sticks", stroke: { low: 17, high: 19 } },
    findings: { checks: { swap: "follows-casing" } },
  },
  { id: "third", date: "2024-03-01", values: { part: "spring" }, findings: {} },
];
