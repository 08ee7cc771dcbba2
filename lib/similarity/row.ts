import type { NumberInterval } from "./measures/numericSimilarity";

/** A value of an attribute: a string for nominal, ordinal and taxonomy, a number or an interval for numeric. */
export type AttributeValue = string | number | NumberInterval;

/** Outcomes by finding key, by the name of the findings attribute; a key that is missing or undefined is unknown. */
export type FindingsByAttribute = Readonly<
  Record<string, Readonly<Record<string, string | undefined>> | undefined>
>;

/** One case as the table takes it in; a value that is missing or undefined is unknown. */
export interface Row {
  /** Unique among the rows in the table. */
  readonly id: string;
  /** ISO 8601, such as 2024-03-09: compared as text, so all dates of a table must have one format. */
  readonly date: string;
  readonly values: Readonly<Record<string, AttributeValue | undefined>>;
  readonly findings: FindingsByAttribute;
}

/** What is known about the case on the bench. */
export interface Query {
  readonly values?: Readonly<Record<string, AttributeValue | undefined>>;
  readonly findings?: FindingsByAttribute;
  /** By the name of a text attribute: one score (0..1) a row, by row number; NaN or a row past the end is unknown. */
  readonly textScores?: Readonly<Record<string, Float64Array>>;
}
