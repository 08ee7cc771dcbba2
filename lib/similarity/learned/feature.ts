/** A column of words by row: 0 is unknown, 1 to `valueCount` the values, as in a case table's coded columns. */
export type CodedFeature = Readonly<{ kind: "coded"; name: string; valueCount: number; codes: Codes }>;

/** A column of finite numbers by row, NaN where unknown. */
export type NumericFeature = Readonly<{ kind: "numeric"; name: string; numbers: Float64Array }>;

/** What rows are compared by. */
export type Feature = CodedFeature | NumericFeature;

/** Any typed array of codes. */
export type Codes = Uint8Array | Uint16Array | Int32Array;

/** Rows to learn from: their features, the class code of each (0 to `classCount` - 1). */
export type LabelledRows = Readonly<{ features: readonly Feature[]; labels: Int32Array; classCount: number }>;
