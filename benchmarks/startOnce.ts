import { openBench } from "@/lib/consult/bench/openBench";
import { timeOnce } from "./measure";

/** Opens the bench of the content that the environment names, once, in a process of its own: a start as it is. */
const { ms, processorMs, value } = timeOnce(() => openBench(process.env));
process.stdout.write(JSON.stringify({ ms, processorMs, cases: value.bench.cases.size }));
