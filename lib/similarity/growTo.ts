interface TypedColumn<T> {
  readonly length: number;
  set(source: T): void;
}

/**
 * A copy of a typed array with room for at least `needed` entries, or the array itself if it has the room.
 * Capacity at least doubles, so that appending n rows copies fewer than 2n entries altogether.
 *
 * @param array what there is.
 * @param needed entries that must fit.
 * @param make makes a new array of a length, such as `(length) => new Uint8Array(length)`.
 * @param fill what the new room holds; default 0.
 */
export function growTo<T extends TypedColumn<T> & { fill(value: number, start?: number): unknown }>(
  array: T,
  needed: number,
  make: (length: number) => T,
  fill = 0,
): T {
  if (needed <= array.length) return array;
  const wider = make(Math.max(needed, 2 * array.length, 16));
  wider.set(array);
  if (fill !== 0) wider.fill(fill, array.length);
  return wider;
}
