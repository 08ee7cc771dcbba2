/**
 * The first k of the items offered, by an order: a heap of at most k entries with the last of them on top.
 */
export class TopHeap<Item extends NonNullable<unknown> = number> {
  readonly #heap: Item[] = [];

  /**
   * @param k how many to keep, whole, 1 or more.
   * @param comesBefore whether a goes before b; must order any two different items.
   */
  constructor(
    readonly k: number,
    readonly comesBefore: (a: Item, b: Item) => boolean,
  ) {}

  /** The last of the k kept, or undefined while there are fewer: whatever does not come before it need not be offered. */
  get last(): Item | undefined {
    return this.#heap.length < this.k ? undefined : this.#heap[0];
  }

  /** Keep the item if it is among the first k so far. */
  offer(candidate: Item): void {
    const heap = this.#heap;
    if (heap.length < this.k) {
      heap.push(candidate);
      this.#rise(heap.length - 1);
    } else if (this.comesBefore(candidate, heap[0] ?? candidate)) {
      heap[0] = candidate;
      this.#sink();
    }
  }

  /** Those kept, first to last. */
  sorted(): Item[] {
    return [...this.#heap].sort((a, b) => (this.comesBefore(a, b) ? -1 : 1));
  }

  #swapIfLater(child: number, parent: number): boolean {
    const heap = this.#heap;
    const below = heap[child];
    const above = heap[parent];
    if (below === undefined || above === undefined || !this.comesBefore(above, below)) return false;
    heap[child] = above;
    heap[parent] = below;
    return true;
  }

  #rise(from: number): void {
    let child = from;
    while (child > 0) {
      const parent = (child - 1) >> 1;
      if (!this.#swapIfLater(child, parent)) return;
      child = parent;
    }
  }

  #sink(): void {
    const heap = this.#heap;
    let parent = 0;
    for (let child = 1; child < heap.length; child = 2 * parent + 1) {
      const left = heap[child];
      const right = heap[child + 1];
      if (left !== undefined && right !== undefined && this.comesBefore(left, right)) child += 1;
      if (!this.#swapIfLater(child, parent)) return;
      parent = child;
    }
  }
}
