import type { CodedColumn, Column, PostingList } from "./column";
import type { NumberInterval } from "./measures/numericSimilarity";
import type { AttributeValue, FindingsByAttribute } from "./row";

/**
 * The code of a value in a coded column.
 *
 * @returns 1..number of values.
 * @throws RangeError when the schema does not list the value.
 */
export function encodeValue(column: CodedColumn, value: AttributeValue): number {
  const code = typeof value === "string" ? column.codeOfValue.get(value) : undefined;
  if (code !== undefined) return code;
  const got = typeof value === "string" ? `"${value}"` : JSON.stringify(value);
  throw new RangeError(
    `"${column.attribute.name}" must be one of its values; got ${got}; add it to the schema or mend it`,
  );
}

/**
 * A number or an interval as an interval.
 *
 * @param name of the attribute, for the error.
 * @throws RangeError unless it is a finite number, or an interval with low <= high that holds a finite number.
 */
export function encodeInterval(name: string, value: AttributeValue): NumberInterval {
  if (typeof value === "number" && Number.isFinite(value)) return { low: value, high: value };
  if (typeof value === "object") {
    const { low, high } = value;
    if (low <= high && low < Number.POSITIVE_INFINITY && high > Number.NEGATIVE_INFINITY)
      return { low, high };
  }
  const got = typeof value === "object" ? `${value.low} to ${value.high}` : JSON.stringify(value);
  throw new RangeError(
    `"${name}" must be a finite number or an interval, low before high; got ${got}; mend the value`,
  );
}

/**
 * The code of an outcome in its key's posting list.
 *
 * @returns 1..number of outcomes.
 * @throws RangeError when the key does not list the outcome.
 */
export function encodeOutcome(list: PostingList, outcome: string): number {
  const code = list.codeOfOutcome.get(outcome);
  if (code !== undefined) return code;
  const known = list.key.outcomes.join(", ");
  throw new RangeError(`"${list.key.key}" must be one of ${known}; got "${outcome}"; mend the outcome`);
}

/**
 * Refuse names that no column has, so that a misspelt one is not taken for unknown.
 *
 * @throws RangeError that names the first stray attribute or finding key.
 */
export function checkNames(
  columns: ReadonlyMap<string, Column>,
  values: Readonly<Record<string, unknown>>,
  findings: FindingsByAttribute,
): void {
  for (const name of Object.keys(values)) {
    const kind = columns.get(name)?.kind;
    if (kind !== "coded" && kind !== "numeric") {
      throw new RangeError(
        `a value must belong to an attribute that holds one; got "${name}"; mend its name`,
      );
    }
  }
  for (const [name, outcomes] of Object.entries(findings)) {
    const column = columns.get(name);
    if (column?.kind !== "findings") {
      throw new RangeError(`findings must belong to a findings attribute; got "${name}"; mend its name`);
    }
    for (const key of Object.keys(outcomes ?? {})) {
      if (column.postings.has(key)) continue;
      throw new RangeError(
        `a key of "${name}" must be in the schema; got "${key}"; add it or mend its spelling`,
      );
    }
  }
}

/** The record's own entry of that name: names such as `constructor` must not reach the prototype. */
export function readOwn<T>(record: Readonly<Record<string, T>> | undefined, name: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, name) ? record[name] : undefined;
}
