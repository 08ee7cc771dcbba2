import "server-only";
import { setImmediate } from "node:timers/promises";
import { type OpenBench, openBench } from "@/lib/consult/bench/openBench";
import { warmSearchIndex } from "@/lib/text/searchIndex";

/** The bench with its content; `searchable` is kept once its words can be searched without holding anybody up. */
export type OpenShop = OpenBench & Readonly<{ searchable: Promise<void> }>;

/** Loads the content and begins to fill the search index, between whatever else there is to do. */
export function openShop(): OpenShop {
  const open = openBench(process.env);
  return { ...open, searchable: warmSearchIndex(open.bench.text.search, setImmediate) };
}
