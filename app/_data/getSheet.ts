import "server-only";
import type { Case } from "@/lib/casebook/caseFile";
import { noFile } from "@/lib/casebook/keeping/contentHash";
import { type KeepingPlace, keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { type KeptFile, readKept } from "@/lib/casebook/keeping/readKept";
import type { Revision } from "@/lib/casebook/keeping/revisionName";
import { type CaseReading, readCase } from "@/lib/casebook/readCase";
import { idSchema } from "@/lib/vocabulary/words";
import { getShop } from "./shop";

/** A job's file as it stands on disk now, read, with its earlier versions. */
export type Sheet = Readonly<{
  place: KeepingPlace;
  kept: KeptFile;
  kase: Case | undefined;
  problems: CaseReading["problems"];
  revisions: readonly Revision[];
}>;

/** Where a case is kept; undefined for what is no id. */
export async function placeOfCase(id: string): Promise<KeepingPlace | undefined> {
  const { casebook, casesFolder } = await getShop();
  return idSchema.safeParse(id).success
    ? keepingPlace(casesFolder, id, casebook.cases.get(id)?.file)
    : undefined;
}

/** Reads a job's sheet from disk, broken or gone too as long as a version of it is kept; undefined where nothing is. */
export async function getSheet(id: string): Promise<Sheet | undefined> {
  const { vocabulary } = await getShop();
  const place = await placeOfCase(id);
  if (!place) return undefined;
  const kept = readKept(place);
  const revisions = listRevisions(place);
  if (kept.hash === noFile && revisions.length === 0) return undefined;
  const reading = readCase(kept.text, place.file, vocabulary);
  return { place, kept, kase: reading.case, problems: reading.problems, revisions };
}
