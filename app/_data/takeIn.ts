import "server-only";
import type { Case } from "@/lib/casebook/caseFile";
import { putCase } from "@/lib/casebook/putCase";
import { takeInCase } from "@/lib/consult/bench/bench";

/** Takes a case that was just saved into the running shop, so that the next page knows it. */
export function takeIn(kase: Case): void {
  const shop = globalThis.benchloreShop;
  if (!shop) return;
  takeInCase(shop.bench, kase);
  putCase(shop.casebook, kase);
}
