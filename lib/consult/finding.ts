import type { PartRef } from "../casebook/partRef";

/** A check together with what was found, on a part where one was named. */
export type Finding = Readonly<{ check: string; outcome: string; part: PartRef | undefined }>;
