import "server-only";
import { randomUUID } from "node:crypto";
import { dirname } from "node:path";
import { restoreRevision } from "@/lib/casebook/keeping/restoreRevision";
import { type RevisedCase, reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { hasPhoto } from "@/lib/casebook/photos/hasPhoto";
import { photosPlace } from "@/lib/casebook/photos/photosPlace";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import type { SentSheet } from "@/lib/consult/sheet/sentSheet";
import { placeOfCase } from "./getSheet";
import { getShop } from "./shop";
import { takeIn } from "./takeIn";

/**
 * Takes an open job one wish further, on disk and in the running shop.
 *
 * @param photos names of photos that were just taken for it
 */
export async function reviseSheet(sent: SentSheet, photos: readonly string[] = []): Promise<RevisedCase> {
  const { bench, vocabulary, casebook, casesFolder } = await getShop();
  const place = await placeOfCase(sent.sheet);
  if (!place) throw new Error(`a sheet must be named by its id; got ${JSON.stringify(sent.sheet)}`);
  const keeper = { vocabulary, nowMs: Date.now(), mark: randomUUID() };
  const save = (): RevisedCase => {
    if (sent.wish === "restore") return restoreRevision(sent.version, sent.baseHash, place, keeper);
    const changed = changeSheet(sent, {
      reader: bench.reader,
      nowMs: keeper.nowMs,
      caseOf: (one) => casebook.cases.get(one),
      photos,
      hasPhoto: (file) => hasPhoto(photosPlace(dirname(casesFolder), place.id), file),
    });
    return changed.text === undefined
      ? { kind: "refused", problems: changed.problems }
      : reviseCase({ text: changed.text, baseHash: sent.baseHash }, place, keeper);
  };
  const revised = save();
  if (revised.kind === "saved") takeIn(revised.case);
  return revised;
}
