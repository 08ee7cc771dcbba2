import type { Attribute } from "./attribute";
import { listValues } from "./column";

const MOST_VALUES = 65_535;
const MOST_OUTCOMES = 255;

function checkList(where: string, values: readonly string[], most: number): string[] {
  const problems: string[] = [];
  if (values.length === 0 || values.length > most) {
    problems.push(`${where} must list 1 to ${most} values; got ${values.length}; add some or split it`);
  }
  const seen = new Set<string>();
  for (const value of values) {
    if (seen.has(value)) problems.push(`${where} must list every value once; got "${value}" twice; drop one`);
    seen.add(value);
  }
  return problems;
}

function checkWeight(where: string, weight: number): string[] {
  if (Number.isFinite(weight) && weight >= 0) return [];
  return [`${where} must weigh 0 or more; got ${weight}; give a finite weight`];
}

function checkAttribute(attribute: Attribute): string[] {
  const where = `attribute "${attribute.name}"`;
  if (attribute.kind === "findings") {
    return [
      ...checkList(
        `${where}, its keys,`,
        attribute.keys.map(({ key }) => key),
        MOST_VALUES,
      ),
      ...attribute.keys.flatMap(({ key, outcomes, weight }) => [
        ...checkList(`${where}, key "${key}",`, outcomes, MOST_OUTCOMES),
        ...checkWeight(`${where}, key "${key}",`, weight),
      ]),
    ];
  }
  const problems = checkWeight(where, attribute.weight);
  if (attribute.kind === "text") return problems;
  if (attribute.kind !== "numeric")
    return [...problems, ...checkList(where, listValues(attribute), MOST_VALUES)];
  if (attribute.tolerance > 0 && Number.isFinite(attribute.tolerance)) return problems;
  return [
    ...problems,
    `${where} must have a tolerance over 0; got ${attribute.tolerance}; give a finite one`,
  ];
}

/**
 * Check the attributes of a table: names, lists, weights and tolerances.
 *
 * @throws RangeError with everything that is wrong, one problem a line.
 */
export function checkAttributes(attributes: readonly Attribute[]): void {
  const problems = attributes.flatMap(checkAttribute);
  const seen = new Set<string>();
  for (const { name } of attributes) {
    if (seen.has(name))
      problems.push(`every attribute must have its own name; got "${name}" twice; rename one`);
    seen.add(name);
  }
  if (problems.length > 0) throw new RangeError(problems.join("\n"));
}
