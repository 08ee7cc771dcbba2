import "server-only";
import { randomUUID } from "node:crypto";
import { restoreRevision } from "@/lib/casebook/keeping/restoreRevision";
import { type RevisedCase, reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import type { SentSheet } from "@/lib/consult/sheet/sentSheet";
import { placeOfCase } from "./getSheet";
import { getShop } from "./shop";
import { takeIn } from "./takeIn";

/** Takes an open job one wish further, on disk and in the running shop. */
export async function reviseSheet(sent: SentSheet): Promise<RevisedCase> {
  const { bench, vocabulary, casebook } = await getShop();
  const place = await placeOfCase(sent.sheet);
  if (!place) throw new Error(`a sheet must be named by its id; got ${JSON.stringify(sent.sheet)}`);
  const keeper = { vocabulary, nowMs: Date.now(), mark: randomUUID() };
  const save = (): RevisedCase => {
    if (sent.wish === "restore") return restoreRevision(sent.version, sent.baseHash, place, keeper);
    const changed = changeSheet(sent, {
      reader: bench.reader,
      nowMs: keeper.nowMs,
      caseOf: (one) => casebook.cases.get(one),
    });
    return changed.text === undefined
      ? { kind: "refused", problems: changed.problems }
      : reviseCase({ text: changed.text, baseHash: sent.baseHash }, place, keeper);
  };
  const revised = save();
  if (revised.kind === "saved") takeIn(revised.case);
  return revised;
}
