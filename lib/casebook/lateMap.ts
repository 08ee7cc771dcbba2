/** A value that is there, or is made by being asked for. */
export type Held<Value> = Readonly<{ value: Value }>;

/** A value that is made when it is first asked for, once. */
export class Late<Value> implements Held<Value> {
  #state: { make: () => Value } | Held<Value>;

  constructor(make: () => Value) {
    this.#state = { make };
  }

  get value(): Value {
    // What it was made of is let go of.
    if ("make" in this.#state) this.#state = { value: this.#state.make() };
    return this.#state.value;
  }
}

/** A map whose values may be made only when they are asked for; otherwise it is like any other, its order and its loops too. */
export class LateMap<Key, Value> implements Map<Key, Value> {
  readonly #held: Map<Key, Held<Value>>;

  /** @param held is the late map's own from then on */
  constructor(held: Map<Key, Held<Value>>) {
    this.#held = held;
  }

  /** The entries of some keys, each value made once for both maps. */
  part(isWanted: (key: Key) => boolean): LateMap<Key, Value> {
    const held = new Map<Key, Held<Value>>();
    for (const [key, one] of this.#held) if (isWanted(key)) held.set(key, one);
    return new LateMap(held);
  }

  get size(): number {
    return this.#held.size;
  }

  get [Symbol.toStringTag](): string {
    return "Map";
  }

  get(key: Key): Value | undefined {
    return this.#held.get(key)?.value;
  }

  has(key: Key): boolean {
    return this.#held.has(key);
  }

  set(key: Key, value: Value): this {
    this.#held.set(key, { value });
    return this;
  }

  delete(key: Key): boolean {
    return this.#held.delete(key);
  }

  clear(): void {
    this.#held.clear();
  }

  forEach(take: (value: Value, key: Key, map: Map<Key, Value>) => void): void {
    for (const [key, value] of this) take(value, key, this);
  }

  keys(): MapIterator<Key> {
    return this.#held.keys();
  }

  *values(): MapIterator<Value> {
    for (const held of this.#held.values()) yield held.value;
  }

  *entries(): MapIterator<[Key, Value]> {
    for (const [key, held] of this.#held) yield [key, held.value];
  }

  [Symbol.iterator](): MapIterator<[Key, Value]> {
    return this.entries();
  }
}

/** The entries of some keys as a map of its own; of a late map no value is made for it. */
export function partOf<Key, Value>(
  map: ReadonlyMap<Key, Value>,
  isWanted: (key: Key) => boolean,
): Map<Key, Value> {
  return map instanceof LateMap ? map.part(isWanted) : new Map([...map].filter(([key]) => isWanted(key)));
}
