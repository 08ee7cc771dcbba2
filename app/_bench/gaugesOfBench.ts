import { parsePartRef } from "@/lib/casebook/partRef";
import type { Answer } from "@/lib/consult/answer";
import { fieldsOfReadings } from "../_gauges/fieldsOfReadings";
import { gaugesHref } from "../_gauges/gaugesFields";
import type { BenchQuery } from "./benchQuery";
import type { PistonView } from "./pistonView";

/** The address of the gauges for what stands on the bench: the bore of the valve that was told of, and the swaps so far. */
export function gaugesOfBench(
  { swaps }: BenchQuery,
  understood: Answer["understood"],
  { host }: PistonView,
): string {
  const place = understood
    .flatMap(({ part }) => (part === null ? [] : (parsePartRef(part) ?? [])))
    .find(({ place, others }) => place !== undefined && !others)?.place;
  const fields = fieldsOfReadings({ gauges: [], diameters: [], swaps, leaks: [] });
  return gaugesHref({ ...(place === undefined ? {} : { part: `${host.id} ${place}` }), ...fields });
}
