/** Told instead of a value by the readers of plain YAML where a text is none, sound or not. */
export const notPlain = Symbol("not plain YAML");
