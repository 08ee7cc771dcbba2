import { quantile, type Timing } from "./measure";

/** One figure of a suite; figures of the same `work` at several sizes make a row of the table. */
export type Result = Readonly<{ work: string; shown: string }>;

/** Runs as `p50 / p95 (p50 of the processor time)`, in milliseconds. */
export function showTimings(timings: readonly Timing[]): string {
  const clock = timings.map(({ ms }) => ms);
  const processor = timings.map(({ processorMs }) => processorMs);
  return `${showMs(quantile(clock, 0.5))} / ${showMs(quantile(clock, 0.95))} (${showMs(quantile(processor, 0.5))}) ms`;
}

/** A long time as `clock (processor time)`, in seconds. */
export const showSeconds = ({ ms, processorMs }: Timing) =>
  `${(ms / 1000).toFixed(2)} (${(processorMs / 1000).toFixed(2)}) s`;

/** Milliseconds to three digits or so. */
function showMs(ms: number): string {
  if (ms >= 100) return ms.toFixed(0);
  return ms >= 10 ? ms.toFixed(1) : ms.toFixed(2);
}
