import "server-only";
import { randomUUID } from "node:crypto";
import { dirname } from "node:path";
import type { RevisedCase } from "@/lib/casebook/keeping/reviseCase";
import { photosPlace } from "@/lib/casebook/photos/photosPlace";
import { takePhotos } from "@/lib/casebook/photos/takePhotos";
import type { SentSheet } from "@/lib/consult/sheet/sentSheet";
import { reviseSheet } from "./reviseSheet";
import { getShop } from "./shop";

/** Takes photos of the state on arrival to an open job: all of them or none. */
export async function addPhotos(sent: SentSheet, files: readonly File[]): Promise<RevisedCase> {
  const { casebook, casesFolder } = await getShop();
  const id = casebook.cases.get(sent.sheet)?.id;
  if (id === undefined)
    throw new Error(`a sheet must be there to add photos; got ${JSON.stringify(sent.sheet)}`);
  const photos = files.map((file) => ({
    name: file.name,
    bytes: async () => new Uint8Array(await file.arrayBuffer()),
  }));
  const taken = await takePhotos(photos, photosPlace(dirname(casesFolder), id), randomUUID());
  return taken.problems.length > 0
    ? { kind: "refused", problems: taken.problems }
    : reviseSheet(sent, taken.files);
}
