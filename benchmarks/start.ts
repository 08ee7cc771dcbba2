import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { quantile, type Timing } from "./measure";
import { type Result, showSeconds } from "./result";

const starts = 3;
const toldSchema = z.object({ ms: z.number(), processorMs: z.number(), cases: z.number() });

/**
 * Starts the program on a content folder in processes of their own: first with nothing remembered, then from the snapshot
 * that this start left.
 *
 * @param count how many cases there are
 * @throws RangeError when a start does not have them all
 */
export function benchStart(content: string, count: number): Result[] {
  const start = (): Timing => {
    const told = execFileSync(
      process.execPath,
      [...process.execArgv, fileURLToPath(new URL("./startOnce.ts", import.meta.url))],
      {
        encoding: "utf8",
        stdio: ["ignore", "pipe", "inherit"],
        env: { ...process.env, BENCHLORE_CONTENT: content, BENCHLORE_CACHE: `${content}/cache` },
      },
    );
    const timing = toldSchema.parse(JSON.parse(told));
    if (timing.cases === count) return timing;
    throw new RangeError(`a start must have all ${count} cases; got ${timing.cases}; mend openBench`);
  };
  const first = start();
  const later = Array.from({ length: starts }, start);
  const middle = (of: (timing: Timing) => number) => quantile(later.map(of), 0.5);
  return [
    { work: "first start, nothing remembered", shown: showSeconds(first) },
    {
      work: "start from the snapshot",
      shown: showSeconds({
        ms: middle(({ ms }) => ms),
        processorMs: middle(({ processorMs }) => processorMs),
      }),
    },
  ];
}
