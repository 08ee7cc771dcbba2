import { readBenchQuery, type SearchParams } from "@/app/_bench/benchQuery";
import { isBare, problemOf } from "@/app/_bench/problemOf";
import { tappedSwap } from "@/app/_bench/tappedSwap";
import type { Shop } from "@/app/_data/shop";
import type { Fields } from "@/lib/casebook/form/caseForm";

/** What a bench's address already says of the case: complaint, instrument, and a step for everything understood and tried. */
export function benchFields(params: SearchParams, consult: Shop["consult"]): Fields {
  const bench = readBenchQuery(params);
  if (isBare(bench)) return {};
  const { instrument, understood, swap } = consult(problemOf(bench));
  const checks = understood
    .filter(({ source }) => source === "says" || source === "evidence")
    .map(({ check, part, outcome }) => ({ check, ...(part ? { part } : {}), found: outcome }));
  const swaps = (swap?.tests ?? [])
    .filter(({ source }) => source !== "travel")
    .map(tappedSwap)
    .map(({ guest, host, result, where, way, turned }) => ({
      swap: [guest, host],
      found: result,
      ...(where ? { where } : {}),
      ...(way ? { way } : {}),
      ...(turned ? { turned } : {}),
    }));
  return {
    ...(instrument ? { instrument: instrument.id } : {}),
    ...(bench.says.trim() ? { complaint: bench.says.trim() } : {}),
    path: [...checks, ...swaps],
  };
}
