import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/**
 * How long one run took, in milliseconds: by the clock, and on the processor, all threads added up. Others on the machine
 * lengthen the first far more than the second.
 */
export type Timing = Readonly<{ ms: number; processorMs: number }>;

/** Memory in megabytes of 10^6 bytes: live objects and typed arrays after a collection, and all that the process holds. */
export type Memory = Readonly<{ liveMb: number; residentMb: number }>;

/**
 * Times a function run by run. What runs before the timing lets the engine compile what it will compile anyway.
 *
 * @param run gets the number of the run, from 0; warm-up runs count from 0 too
 * @returns one timing a run, in their order
 */
export function measure(
  run: (number: number) => unknown,
  { runs, warmUp }: Readonly<{ runs: number; warmUp: number }>,
): Timing[] {
  for (let number = 0; number < warmUp; number += 1) run(number);
  return Array.from({ length: runs }, (_, number) => timeOnce(() => run(number)));
}

/** Runs something once: what it gave, and how long it took. */
export function timeOnce<Value>(run: () => Value): Timing & Readonly<{ value: Value }> {
  const spent = process.cpuUsage();
  const start = performance.now();
  const value = run();
  const ms = performance.now() - start;
  const { user, system } = process.cpuUsage(spent);
  return { value, ms, processorMs: (user + system) / 1000 };
}

/**
 * The value at rank ceil(q n): one that was measured, never one between two.
 *
 * @param q over 0 up to 1: .5 for the middle one, .95 for that which 95 in 100 stay under
 */
export function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(q * sorted.length) - 1)] ?? Number.NaN;
}

/** Collects garbage, then reads what is left. */
export function readMemory(): Memory {
  collectGarbage();
  const { heapUsed, arrayBuffers, rss } = process.memoryUsage();
  return { liveMb: (heapUsed + arrayBuffers) / 1e6, residentMb: rss / 1e6 };
}

function collectGarbage(): void {
  setFlagsFromString("--expose-gc");
  const collect: unknown = runInNewContext("gc");
  if (typeof collect === "function") collect();
}
