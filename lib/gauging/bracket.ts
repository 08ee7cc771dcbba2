/**
 * What is known of a size: at least `lowMm` and under `highMm`. Null where nothing bounds it on that side.
 * A stated size is a bracket with both ends equal, and then reaches its upper end.
 */
export type Bracket = Readonly<{ lowMm: number | null; highMm: number | null }>;
